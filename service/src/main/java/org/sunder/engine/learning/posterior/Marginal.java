package org.sunder.engine.learning.posterior;

import java.util.List;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.quadrature.Node;

/**
 * The posterior of one hyperparameter in units of its prior, from its mass at a few nodes.
 *
 * <p>Mass over prior weight is the likelihood at a node; its logarithm is smooth and is interpolated by a cubic spline,
 * held at its end values beyond the nodes, and multiplied with the prior's density on a fine grid.
 */
final class Marginal {

    private static final int FINE = 2000;
    /** Likelihood, against the largest, below which a node's is held. */
    private static final double LEAST = 1e-12;

    private final double low;
    private final double step;
    private final double[] cumulative = new double[FINE + 1];

    private Marginal(List<Node> nodes, double[] mass, double low, double high) {
        this.low = low;
        this.step = (high - low) / FINE;
        if (nodes.size() > 1) {
            PolynomialSplineFunction log = logLikelihood(nodes, mass);
            double first = nodes.get(0).value();
            double last = nodes.get(nodes.size() - 1).value();
            double before = 0;
            for (int i = 0; i <= FINE; i++) {
                double score = low + i * step;
                double density = FastMath.exp(log.value(Math.min(Math.max(score, first), last)) - 0.5 * score * score);
                cumulative[i] = i == 0 ? 0 : cumulative[i - 1] + 0.5 * (before + density);
                before = density;
            }
        }
    }

    /** Of a score that is standard normal a priori. */
    static Marginal ofNormal(List<Node> nodes, double[] mass) {
        return new Marginal(nodes, mass, -6, 6);
    }

    /** Of a score that is standard half-normal a priori. */
    static Marginal ofHalfNormal(List<Node> nodes, double[] mass) {
        return new Marginal(nodes, mass, 0, 6);
    }

    private static PolynomialSplineFunction logLikelihood(List<Node> nodes, double[] mass) {
        double[] scores = new double[mass.length];
        double[] logs = new double[mass.length];
        double largest = 0;
        for (int i = 0; i < mass.length; i++) {
            scores[i] = nodes.get(i).value();
            logs[i] = mass[i] / nodes.get(i).weight();
            largest = Math.max(largest, logs[i]);
        }
        for (int i = 0; i < mass.length; i++) {
            logs[i] = FastMath.log(Math.max(logs[i] / largest, LEAST));
        }
        return mass.length < 3
                ? new LinearInterpolator().interpolate(scores, logs)
                : new SplineInterpolator().interpolate(scores, logs);
    }

    /** Quantile of the score; p in (0, 1). A quantity that is known has score 0. */
    double quantile(double p) {
        double wanted = p * cumulative[FINE];
        int i = 0;
        while (i < FINE - 1 && cumulative[i + 1] < wanted) {
            i++;
        }
        double cell = cumulative[i + 1] - cumulative[i];
        return cell > 0 ? low + step * (i + (wanted - cumulative[i]) / cell) : 0;
    }
}
