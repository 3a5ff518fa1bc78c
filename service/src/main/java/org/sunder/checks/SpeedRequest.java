package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;

/** A separation as seen on the ground. */
@Schema(name = "SpeedQuestion", description = "A separation as seen on the ground: filmed, or paced out; not both.")
record SpeedRequest(
        @Schema(description = "As filmed.") @Valid @Nullable VideoSheet video,

        @Schema(description = "As thrown level and paced out.") @Valid @Nullable ThrowSheet thrown,

        @Schema(description = "With it the answer has the shock on the harness.") @Valid @Nullable HarnessSheet harness) {

    /** From frames of a film. */
    @Schema(name = "FilmedSeparation", description = "From frames of a film.")
    record VideoSheet(
            @Schema(description = "How far the part moved.") @NotNull(message = "the distance is needed") Length distance,

            @Schema(description = "Over how many frames.", example = "6")
            @NotNull(message = "the number of frames is needed") Integer frames,

            @Schema(description = "True rate of recording, not of playing back.", example = "240")
            @NotNull(message = "the frame rate is needed") BigDecimal framesPerSecond) {}

    /** From where a part landed. */
    @Schema(name = "ThrownSeparation", description = "From where a part first touched the ground.")
    record ThrowSheet(
            @Schema(description = "Level distance to where it first touched.")
            @NotNull(message = "the distance is needed") Length distance,

            @Schema(description = "Height of the joint above that ground.") @NotNull(message = "the height is needed") Length height) {}

    /** The harness between the two parts. */
    @Schema(name = "Harness", description = "The harness between the two parts.")
    record HarnessSheet(
            @NotNull(message = "the forward mass is needed") Mass forwardMass,

            @NotNull(message = "the aft mass is needed") Mass aftMass,

            @Schema(description = "How far it lengthens at its limit.") @NotNull(message = "the stretch is needed") Length stretch) {}
}
