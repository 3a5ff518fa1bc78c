package org.sunder.groundtest;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.MathContext;
import org.sunder.engine.learning.posterior.CorrectionFactor;

/** The learned factor on the handbook charge. */
@Schema(name = "Correction", description = "The factor on the handbook charge that tests have taught.")
public record CorrectionView(
        @Schema(description = "Median.", example = "1.0") BigDecimal factor,

        @Schema(description = "Lower end of the interval.", example = "0.49")
        BigDecimal low,

        @Schema(description = "Upper end of the interval.", example = "2.03")
        BigDecimal high,

        @Schema(description = "What the interval holds.", example = "0.90")
        BigDecimal interval) {

    private static final MathContext DIGITS = new MathContext(4);

    /** As answered. */
    public static CorrectionView of(CorrectionFactor factor) {
        return new CorrectionView(
                digits(factor.median()), digits(factor.low()), digits(factor.high()), new BigDecimal("0.90"));
    }

    private static BigDecimal digits(double value) {
        return BigDecimal.valueOf(value).round(DIGITS);
    }
}
