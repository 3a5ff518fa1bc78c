package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.sunder.airframe.SetupSheet;

/** A whole setup, as it would be given to a joint. */
@Schema(name = "SetupQuestion", description = "A whole setup, as it would be given to a joint.")
record SetupCheckRequest(
        @NotNull(message = "the setup is needed") @Valid SetupSheet setup) {}
