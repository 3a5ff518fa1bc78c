package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.PinSheet;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.web.RequestList;

/** What holds a joint closed. */
@Schema(name = "RetentionQuestion", description = "What holds a joint closed.")
record RetentionRequest(
        @Schema(description = "Shear pins across the joint; empty for a friction fit.")
        @Size(max = 10, message = "at most 10 sets of pins") List<@NotNull @Valid PinSheet> pins,

        @Schema(description = "Pull force that parts the joint with no pins in.") @Nullable Force fitForce,

        @Schema(description = "One standard deviation of it; half of it, and at least 5 N, where not given.") @Nullable Force fitForceUncertainty,

        @Schema(description = "Inner diameter at the joint; with it the answer has the threshold pressure.") @Nullable Length innerDiameter,

        @Schema(description = "Length of the shoulder in the joint; with the diameter it is judged.") @Nullable Length shoulder) {

    RetentionRequest {
        pins = RequestList.of(pins);
    }
}
