package org.sunder.engine.learning.model;

import java.util.Optional;

/**
 * What is believed before any test.
 *
 * <p>Log correction of a joint as set up: c = μ + u(airframe) + v(joint) + w(setup), with μ ~ N(0, meanSd²), u ~ N(0,
 * τₐ²), v ~ N(0, τⱼ²), w ~ N(0, τₛ² + sₓ²), each τ half-normal with the scale given here and sₓ the setup's own input
 * uncertainty. Shot-to-shot scatter σ and width δ of the band of partial separation are log-normal and shared by the
 * fleet. All are in units of log charge ratio, dimensionless.
 *
 * @param meanSd standard deviation of the fleet's mean log correction μ
 * @param airframeScale scale of the half-normal of τₐ; 0 removes the level
 * @param jointScale scale of the half-normal of τⱼ; 0 removes the level
 * @param setupScale scale of the half-normal of τₛ; 0 leaves only the input uncertainty
 * @param scatterMedian median of σ
 * @param scatterLogSd standard deviation of ln σ; 0 makes σ known
 * @param bandMedian median of δ
 * @param bandLogSd standard deviation of ln δ; 0 makes δ known
 * @param lapse probability that a trial says nothing because something unnoticed went wrong
 * @param flyer what stands in place of the priors of μ, σ and δ where other flyers were learned from; the nodes at which σ and
 *     δ are tried stay those of the priors
 */
public record Priors(
        double meanSd,
        double airframeScale,
        double jointScale,
        double setupScale,
        double scatterMedian,
        double scatterLogSd,
        double bandMedian,
        double bandLogSd,
        double lapse,
        Optional<FlyerPrior> flyer) {

    /** The version of the model: it changes where the same log would be answered otherwise. */
    public static final String MODEL = "1.0";

    public Priors {
        requireAtLeastZero(airframeScale, jointScale, setupScale, scatterLogSd, bandLogSd);
        if (!(meanSd > 0 && scatterMedian > 0 && bandMedian > 0 && lapse >= 0 && lapse < 1)) {
            throw new IllegalArgumentException("mean, scatter and band must be positive and the lapse in [0, 1)");
        }
    }

    /** Priors of a flyer of whom nothing is known from others. */
    public Priors(
            double meanSd,
            double airframeScale,
            double jointScale,
            double setupScale,
            double scatterMedian,
            double scatterLogSd,
            double bandMedian,
            double bandLogSd,
            double lapse) {
        this(
                meanSd,
                airframeScale,
                jointScale,
                setupScale,
                scatterMedian,
                scatterLogSd,
                bandMedian,
                bandLogSd,
                lapse,
                Optional.empty());
    }

    /** These priors with what other flyers' rockets taught. */
    public Priors with(FlyerPrior learned) {
        return new Priors(
                meanSd,
                airframeScale,
                jointScale,
                setupScale,
                scatterMedian,
                scatterLogSd,
                bandMedian,
                bandLogSd,
                lapse,
                Optional.of(learned));
    }

    /** The project's own choice of priors. */
    public static Priors standard() {
        return new Priors(0.30, 0.25, 0.15, 0.10, 0.10, 0.5, 0.15, 0.5, 0.02);
    }

    private static void requireAtLeastZero(double... values) {
        for (double value : values) {
            if (!(value >= 0)) {
                throw new IllegalArgumentException("the scale of a prior must be 0 or more, not " + value);
            }
        }
    }
}
