package org.sunder.stock.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.sunder.engine.quantity.Force;

/** The break force of one pin. */
@Schema(name = "PullTestReport", description = "One pin of the batch, pulled in single shear until it broke.")
record PullTestRequest(
        @Schema(description = "Force at which it broke.") @NotNull(message = "the break force is needed") Force force) {}
