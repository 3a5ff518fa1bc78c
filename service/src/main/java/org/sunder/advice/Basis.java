package org.sunder.advice;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Priors;

/**
 * What an answer rests on, so that it can be reproduced.
 *
 * @param model version of the model
 * @param setupRevision revision of the setup in force
 * @param tests counted tests of this joint
 * @param fleetTests counted tests of all joints of the flyer, this one's included
 * @param poolSnapshot number of the snapshot of the pool that it starts from; null where it starts from the model's own priors
 * @param filmedPercent how good the speeds of films that it counts on are, in percent; null where it counts on none
 */
@Schema(description = "What an answer rests on, so that it can be reproduced.")
public record Basis(
        @Schema(description = "Version of the model.", example = "1.0")
        String model,

        @Schema(description = "Revision of the setup in force.", example = "1")
        int setupRevision,

        @Schema(description = "Counted tests of this joint.", example = "3")
        int tests,

        @Schema(description = "Counted tests of the whole fleet, this joint's included.", example = "17")
        int fleetTests,

        @Schema(
                description = "Number of the snapshot of the pool that it starts from; absent where it starts from the"
                        + " model's own priors.",
                example = "3")
        @Nullable Integer poolSnapshot,

        @Schema(
                description = "How good the speeds of films that the choice of charges counts on are, one standard"
                        + " deviation in percent; absent where it counts on none.",
                example = "5")
        @Nullable BigDecimal filmedPercent) {

    /** The model this service computes with. */
    public static final String MODEL = Priors.MODEL;
}
