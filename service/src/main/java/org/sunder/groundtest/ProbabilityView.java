package org.sunder.groundtest;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;

/** Chances of the outcomes. */
@Schema(name = "Probability", description = "Chances of the three outcomes; they add to 1 but for rounding.")
public record ProbabilityView(
        @Schema(example = "0.41") BigDecimal separated,
        @Schema(example = "0.21") BigDecimal partial,
        @Schema(example = "0.38") BigDecimal none) {

    private static final int DIGITS = 4;

    /** As answered. */
    public static ProbabilityView of(OutcomeProbabilities chances) {
        return new ProbabilityView(rounded(chances.separated()), rounded(chances.partial()), rounded(chances.none()));
    }

    /** A chance to four decimals. */
    public static BigDecimal rounded(double chance) {
        return BigDecimal.valueOf(chance).setScale(DIGITS, RoundingMode.HALF_EVEN);
    }
}
