package org.sunder.engine.learning.posterior;

import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.quadrature.FastExp;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Grid;

/**
 * The fleet's mean μ for one combination of hyperparameters: its prior times the likelihood of airframes.
 *
 * <p>The log likelihood is smooth and known at knots; between them it is interpolated by a cubic. Where many airframes
 * make the density narrower than the grid of c can carry, it is replaced by the normal of the same mass, mean and
 * variance, found on local nodes; it is then narrow against τₐ, so its shape no longer matters.
 */
final class MeanPosterior {

    /** A density narrower than this many grid steps is treated as a normal. */
    private static final double RESOLVED = 1.6;

    /** Third difference of the log likelihood, in ln, from which on a cubic is not trusted. */
    private static final double STEEP = 4;

    /** Log of a density, against its peak, that adds nothing. */
    private static final double NOTHING = -40;

    private static final double SQRT_2PI = 2.5066282746310002;
    private static final int LOCAL_NODES = 41;

    private final MeanPrior prior;
    private final Grid corrections;
    private final int first;
    private final int stride;
    private final double[] knots;
    private final double peak;
    private final double centre;
    private final double bend;

    /**
     * @param likelihood log likelihood at the knots of μ
     */
    MeanPosterior(Design design, MeanPrior prior, double[] likelihood) {
        this.prior = prior;
        this.corrections = design.corrections();
        this.first = design.firstKnot();
        this.stride = design.knotStride();
        this.knots = likelihood;
        int best = 0;
        for (int k = 1; k < knots.length; k++) {
            best = logDensity(k) > logDensity(best) ? k : best;
        }
        int k = Math.min(Math.max(best, 1), knots.length - 2);
        this.bend = 2 * logDensity(k) - logDensity(k - 1) - logDensity(k + 1);
        double slope = (logDensity(k + 1) - logDensity(k - 1)) / 2;
        boolean vertex = best == k && bend > 0;
        this.peak = logDensity(best) + (vertex ? 0.5 * slope * slope / bend : 0);
        this.centre = best + (vertex ? slope / bend : 0);
    }

    private double mean(double k) {
        return corrections.node(first) + k * stride * corrections.step();
    }

    private double logDensity(int k) {
        return knots[k] + prior.atKnot(k);
    }

    /** Log of the density at its peak, by a parabola through three knots. */
    double peak() {
        return peak;
    }

    /**
     * Mass at each node of c of an airframe's mean, μ smoothed by τₐ, in units of exp(peak).
     *
     * @param kernel the kernel by τₐ
     * @param spread τₐ
     */
    double[] airframe(GaussianKernel kernel, double spread) {
        return narrow() ? normal(spread) : kernel.density(onGrid());
    }

    /**
     * Whether the grid of c cannot carry the density: it falls off within a knot on both sides of its peak. A shoulder,
     * steep on one side only (all tests so far separated, or none did), is not narrow.
     */
    private boolean narrow() {
        double least = (stride / RESOLVED) * (stride / RESOLVED);
        int k = (int) Math.round(centre);
        if (bend <= least || k < 2 || k > knots.length - 3) {
            return false;
        }
        double top = logDensity(k);
        return top - logDensity(k - 2) > least && top - logDensity(k + 2) > least;
    }

    private double[] onGrid() {
        double[] mass = new double[corrections.size()];
        int last = first + (knots.length - 1) * stride;
        for (int i = first; i <= last; i++) {
            double at = (double) (i - first) / stride;
            double log = interpolate(at) + prior.atNode(i, mean(at)) - peak;
            mass[i] = log < NOTHING ? 0 : corrections.step() * FastExp.exp(log);
        }
        return mass;
    }

    /**
     * Cubic Lagrange interpolation of the log likelihood at a knot number; linear where it falls steeply, since a cubic
     * through a cliff overshoots beside it.
     */
    private double interpolate(double at) {
        int k = (int) Math.min(Math.max(Math.floor(at), 1), knots.length - 3);
        double t = at - k;
        if (steep(k)) {
            return knots[k] + t * (knots[k + 1] - knots[k]);
        }
        return -t * (t - 1) * (t - 2) / 6 * knots[k - 1]
                + (t + 1) * (t - 1) * (t - 2) / 2 * knots[k]
                - (t + 1) * t * (t - 2) / 2 * knots[k + 1]
                + (t + 1) * t * (t - 1) / 6 * knots[k + 2];
    }

    private boolean steep(int k) {
        double thirdDifference = knots[k + 2] - 3 * (knots[k + 1] - knots[k]) - knots[k - 1];
        return Math.abs(thirdDifference) > STEEP;
    }

    private double[] normal(double spread) {
        double sd = 1 / FastMath.sqrt(bend);
        Moments rough = moments(centre, 8 * sd);
        Moments fine = moments(rough.mean, 8 * FastMath.sqrt(rough.variance));
        double unit = stride * corrections.step();
        double total = FastMath.sqrt(spread * spread + fine.variance * unit * unit);
        double scale = fine.mass * unit * corrections.step() / (total * SQRT_2PI);
        double[] result = new double[corrections.size()];
        for (int i = 0; i < result.length; i++) {
            double z = (corrections.node(i) - mean(fine.mean)) / total;
            result[i] = scale * FastMath.exp(-0.5 * z * z);
        }
        return result;
    }

    /** Mass, mean and variance of the density within {@code half} knots of {@code centre}, in knots. */
    private Moments moments(double centre, double half) {
        double step = 2 * half / (LOCAL_NODES - 1);
        double mass = 0;
        double firstMoment = 0;
        double secondMoment = 0;
        for (int i = 0; i < LOCAL_NODES; i++) {
            double off = i * step - half;
            double density = FastMath.exp(interpolate(centre + off) + prior.at(mean(centre + off)) - peak) * step;
            mass += density;
            firstMoment += density * off;
            secondMoment += density * off * off;
        }
        double shift = firstMoment / mass;
        return new Moments(mass, centre + shift, secondMoment / mass - shift * shift);
    }

    private record Moments(double mass, double mean, double variance) {}
}
