package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.groundtest.CorrectionView;
import org.sunder.groundtest.GroundTestView;

/** A test as logged, with what it taught. */
@Schema(name = "LoggedTest", description = "A test as logged, the correction it leaves, and what to do next.")
record LoggedTestView(
        GroundTestView test,
        CorrectionView correction,

        @Schema(description = "Present where the model gave this outcome less than 2 %.") @Nullable SurpriseView surprise,

        NextChargeView next) {

    /** An outcome that was hardly expected. */
    @Schema(name = "Surprise", description = "An outcome that the model gave less than 2 %, and what to ask then.")
    record SurpriseView(
            @Schema(example = "0.0041") java.math.BigDecimal probability,

            @Schema(description = "What to look at before it is believed.")
            List<String> questions,

            @Schema(description = "Where to void the test, if one of them explains it.")
            String voidAt) {}
}
