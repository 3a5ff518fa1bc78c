package org.sunder.engine.learning.posterior;

import java.util.List;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;

/** The prior of the fleet's mean μ at one node of (σ, δ). */
sealed interface MeanPrior {

    /** Log of the density at a knot of μ. */
    double atKnot(int k);

    /** Log of the density at μ, which is node i of the grid of c. */
    double atNode(int i, double mean);

    /** Log of the density at μ. */
    double at(double mean);

    /** N(0, sd²), whatever σ and δ. */
    final class Normal implements MeanPrior {

        private final double sd;
        private final double logNorm;
        private final double[] knots;

        Normal(double sd, Design design) {
            this.sd = sd;
            this.logNorm = -FastMath.log(sd * FastMath.sqrt(2 * Math.PI));
            this.knots = new double[design.knots()];
            for (int k = 0; k < knots.length; k++) {
                double score = (k - design.knotHalf())
                        * design.knotStride()
                        * design.corrections().step()
                        / sd;
                knots[k] = -0.5 * score * score + logNorm;
            }
        }

        @Override
        public double atKnot(int k) {
            return knots[k];
        }

        @Override
        public double atNode(int i, double mean) {
            return at(mean);
        }

        @Override
        public double at(double mean) {
            return -0.5 * (mean / sd) * (mean / sd) + logNorm;
        }
    }

    /**
     * A mixture of normals of (μ, ln σ, ln δ), over the density of (ln σ, ln δ) by which the node is weighted already.
     *
     * <p>Given ln σ and ln δ each normal leaves one of μ, with the mean m + kᵀ(y − ȳ) and the variance v − kᵀc, where c are the
     * covariances of μ with (ln σ, ln δ) and k = V⁻¹c (conditional normal; T. W. Anderson, An Introduction to Multivariate
     * Statistical Analysis, theorem 2.5.1).
     */
    final class Learned implements MeanPrior {

        private final List<Slice> slices;
        private final double[] nodes;
        private final Design design;

        private record Slice(double logWeight, double mean, double sd) {

            double log(double mu) {
                double z = (mu - mean) / sd;
                return logWeight - 0.5 * z * z;
            }
        }

        Learned(FlyerPrior prior, Priors reference, ProbitNode probit, Design design) {
            this.design = design;
            double scatter = FastMath.log(probit.sigma());
            double band = FastMath.log(probit.delta());
            double weighted = logNormal(
                            scatter - FastMath.log(reference.scatterMedian()),
                            reference.scatterLogSd() * reference.scatterLogSd())
                    + logNormal(
                            band - FastMath.log(reference.bandMedian()), reference.bandLogSd() * reference.bandLogSd());
            this.slices = prior.parts().stream()
                    .map(part -> slice(part, scatter, band, weighted))
                    .toList();
            this.nodes = new double[design.corrections().size()];
            for (int i = 0; i < nodes.length; i++) {
                nodes[i] = at(design.corrections().node(i));
            }
        }

        private static Slice slice(FlyerPrior.Part part, double scatter, double band, double weighted) {
            FlyerPrior.Covariance v = part.covariance();
            double s = scatter - part.logScatter();
            double b = band - part.logBand();
            double determinant = v.scatter() * v.band() - v.scatterBand() * v.scatterBand();
            double quadratic = (v.band() * s * s - 2 * v.scatterBand() * s * b + v.scatter() * b * b) / determinant;
            double ks = (v.band() * v.meanScatter() - v.scatterBand() * v.meanBand()) / determinant;
            double kb = (v.scatter() * v.meanBand() - v.scatterBand() * v.meanScatter()) / determinant;
            double sd = FastMath.sqrt(v.mean() - ks * v.meanScatter() - kb * v.meanBand());
            double log = FastMath.log(part.weight())
                    - 0.5 * quadratic
                    - FastMath.log(2 * Math.PI * FastMath.sqrt(determinant))
                    - FastMath.log(sd * FastMath.sqrt(2 * Math.PI));
            return new Slice(log - weighted, part.mean() + ks * s + kb * b, sd);
        }

        private static double logNormal(double off, double variance) {
            return -0.5 * off * off / variance - 0.5 * FastMath.log(2 * Math.PI * variance);
        }

        @Override
        public double atKnot(int k) {
            return nodes[design.firstKnot() + k * design.knotStride()];
        }

        @Override
        public double atNode(int i, double mean) {
            return nodes[i];
        }

        @Override
        public double at(double mean) {
            double highest = Double.NEGATIVE_INFINITY;
            for (Slice slice : slices) {
                highest = Math.max(highest, slice.log(mean));
            }
            double sum = 0;
            for (Slice slice : slices) {
                sum += FastMath.exp(slice.log(mean) - highest);
            }
            return highest + FastMath.log(sum);
        }
    }
}
