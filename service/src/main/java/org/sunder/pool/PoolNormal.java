package org.sunder.pool;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Stream;
import org.sunder.engine.learning.model.FlyerPrior;

/** One normal of what a snapshot says. */
@Schema(
        name = "PoolNormal",
        description =
                "One three-dimensional normal distribution of a flyer's mean log correction, log scatter and log band.")
public record PoolNormal(
        @Schema(description = "Its share; all of them add to 1.", example = "0.28")
        @NotNull(message = "the weight is needed") BigDecimal weight,

        @Schema(description = "Mean of the natural logarithm of a flyer's mean correction.", example = "0.04")
        @NotNull(message = "a number is needed") BigDecimal logCorrection,

        @Schema(
                description = "Mean of the natural logarithm of the scatter, which is in log charge ratio.",
                example = "-2.31")
        @NotNull(message = "a number is needed") BigDecimal logScatter,

        @Schema(
                description = "Mean of the natural logarithm of the width of the partial band, in log charge ratio.",
                example = "-1.94")
        @NotNull(message = "a number is needed") BigDecimal logBand,

        @NotNull(message = "the covariance is needed") @Valid Covariance covariance) {

    private static final int PLACES = 5;

    /** Variances and covariances. */
    @Schema(name = "PoolCovariance", description = "Variances of the three, and their covariances; positive definite.")
    public record Covariance(
            @Schema(description = "Variance of the log correction.", example = "0.035")
            @NotNull(message = "a number is needed") BigDecimal correction,

            @Schema(description = "Variance of the log scatter.", example = "0.09")
            @NotNull(message = "a number is needed") BigDecimal scatter,

            @Schema(description = "Variance of the log band.", example = "0.09")
            @NotNull(message = "a number is needed") BigDecimal band,

            @Schema(example = "0") @NotNull(message = "a number is needed") BigDecimal correctionScatter,

            @Schema(example = "0") @NotNull(message = "a number is needed") BigDecimal correctionBand,

            @Schema(example = "0") @NotNull(message = "a number is needed") BigDecimal scatterBand) {}

    /** A normal as it is kept, with five decimals, of a given weight. */
    static PoolNormal of(FlyerPrior.Part part, BigDecimal weight) {
        FlyerPrior.Covariance v = part.covariance();
        return new PoolNormal(
                weight,
                rounded(part.mean()),
                rounded(part.logScatter()),
                rounded(part.logBand()),
                new Covariance(
                        rounded(v.mean()),
                        rounded(v.scatter()),
                        rounded(v.band()),
                        rounded(v.meanScatter()),
                        rounded(v.meanBand()),
                        rounded(v.scatterBand())));
    }

    /** A number with the decimals that are kept. */
    static BigDecimal rounded(double value) {
        return plain(BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN));
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /**
     * The normal that the engine computes with.
     *
     * @throws IllegalArgumentException where it is none
     */
    FlyerPrior.Part part() {
        return new FlyerPrior.Part(
                weight.doubleValue(),
                logCorrection.doubleValue(),
                logScatter.doubleValue(),
                logBand.doubleValue(),
                new FlyerPrior.Covariance(
                        covariance.correction().doubleValue(),
                        covariance.scatter().doubleValue(),
                        covariance.band().doubleValue(),
                        covariance.correctionScatter().doubleValue(),
                        covariance.correctionBand().doubleValue(),
                        covariance.scatterBand().doubleValue()));
    }

    /** Its numbers in the order of the document. */
    Stream<BigDecimal> numbers() {
        return Stream.of(
                        weight,
                        logCorrection,
                        logScatter,
                        logBand,
                        covariance.correction(),
                        covariance.scatter(),
                        covariance.band(),
                        covariance.correctionScatter(),
                        covariance.correctionBand(),
                        covariance.scatterBand())
                .map(PoolNormal::plain);
    }
}
