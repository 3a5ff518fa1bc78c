package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;

/**
 * What is believed of a flyer before any test where other flyers' rockets were learned from: a mixture of normals of the
 * flyer's mean log correction μ, of ln σ and of ln δ, which then stands in place of the independent priors of {@link Priors}.
 *
 * @param parts the normals; their weights add to 1
 */
public record FlyerPrior(List<Part> parts) {

    /** The share of what would be believed without the others, so that a flyer unlike the rest is found out quickly. */
    public static final double BASE_SHARE = 0.1;

    private static final double ROUNDING = 1e-6;

    public FlyerPrior {
        parts = List.copyOf(parts);
        double sum = parts.stream().mapToDouble(Part::weight).sum();
        if (!(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("the weights of a prior's parts must add to 1, not " + sum);
        }
    }

    /**
     * One normal, in units of log charge ratio.
     *
     * @param weight its share, above 0
     * @param mean its mean of μ
     * @param logScatter its mean of ln σ
     * @param logBand its mean of ln δ
     * @param covariance of the three
     */
    public record Part(double weight, double mean, double logScatter, double logBand, Covariance covariance) {

        public Part {
            boolean finite = Double.isFinite(mean) && Double.isFinite(logScatter) && Double.isFinite(logBand);
            if (!(weight > 0 && weight <= 1 && finite)) {
                throw new IllegalArgumentException("a part of a prior needs a weight in (0, 1] and finite means");
            }
        }

        /** This normal with another weight. */
        public Part weighing(double other) {
            return new Part(other, mean, logScatter, logBand, covariance);
        }
    }

    /**
     * Covariance of μ, ln σ and ln δ: symmetric and positive definite.
     *
     * @param mean variance of μ
     * @param scatter variance of ln σ
     * @param band variance of ln δ
     * @param meanScatter covariance of μ and ln σ
     * @param meanBand covariance of μ and ln δ
     * @param scatterBand covariance of ln σ and ln δ
     */
    public record Covariance(
            double mean, double scatter, double band, double meanScatter, double meanBand, double scatterBand) {

        public Covariance {
            if (!(scatter > 0
                    && scatter * band > scatterBand * scatterBand
                    && determinant(mean, scatter, band, meanScatter, meanBand, scatterBand) > 0)) {
                throw new IllegalArgumentException("the covariance of a part of a prior must be positive definite");
            }
        }

        private static double determinant(double m, double s, double b, double ms, double mb, double sb) {
            return m * (s * b - sb * sb) - ms * (ms * b - sb * mb) + mb * (ms * sb - s * mb);
        }
    }

    /**
     * What others taught, with the standard share of what would be believed without them.
     *
     * @param learned normals whose weights add to 1
     */
    public static FlyerPrior of(List<Part> learned, Priors base) {
        return of(learned, base, BASE_SHARE);
    }

    /**
     * What others taught, with a share of what would be believed without them.
     *
     * @param share weight of the base prior, in (0, 1)
     */
    public static FlyerPrior of(List<Part> learned, Priors base, double share) {
        List<Part> parts = new ArrayList<>();
        parts.add(base(base, share));
        learned.forEach(part -> parts.add(part.weighing((1 - share) * part.weight())));
        return new FlyerPrior(parts);
    }

    /**
     * The priors' own belief of a flyer, as one part.
     *
     * @param priors with scatter and band not known beforehand
     * @param weight its share
     */
    public static Part base(Priors priors, double weight) {
        return new Part(
                weight,
                0,
                StrictMath.log(priors.scatterMedian()),
                StrictMath.log(priors.bandMedian()),
                new Covariance(
                        priors.meanSd() * priors.meanSd(),
                        priors.scatterLogSd() * priors.scatterLogSd(),
                        priors.bandLogSd() * priors.bandLogSd(),
                        0,
                        0,
                        0));
    }
}
