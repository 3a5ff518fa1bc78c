package org.sunder.groundtest;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** Why a test is voided or restored. */
@Schema(name = "Reason", description = "Why a test is taken out of the fit, or back into it.")
public record ReasonRequest(
        @Schema(example = "one pin was missing")
        @NotBlank(message = "a reason is needed") @Size(max = 500, message = "at most 500 characters") String reason) {}
