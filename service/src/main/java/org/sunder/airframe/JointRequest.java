package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** A new joint with its first setup. */
@Schema(description = "A new joint with its first setup.")
public record JointRequest(
        @Schema(example = "nose to bay")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @NotNull(message = "drogue, main or other is needed") DeploymentEvent event,

        @NotNull(message = "the first setup is needed") @Valid SetupSheet setup) {}
