package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.quadrature.FastNormal;
import org.sunder.engine.learning.quadrature.Grid;
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * One node of (σ, δ) and of the bias of speeds.
 *
 * @param sigma shot-to-shot scatter σ of the log threshold
 * @param delta width δ of the band of partial separation, in log ratio
 * @param bias bias b of the predicted ln speed
 * @param unknownBiasSd standard deviation of what of the bias is summed out of each reading by itself; 0 where {@code bias}
 *     is a node of it
 * @param weight prior weight of the node
 * @param scatterNode number of the node of σ in the design
 */
record ProbitNode(double sigma, double delta, double bias, double unknownBiasSd, double weight, int scatterNode) {

    private static final double SQRT_2PI = 2.5066282746310002;

    /** Nodes for a fleet without measured speeds: the bias does not matter and is summed out of a single reading. */
    static List<ProbitNode> withoutSpeeds(Design design, Priors priors) {
        return of(design, priors, QuadratureRules.known(), SpeedReading.BIAS_SD);
    }

    /**
     * Nodes for a fleet with measured speeds, whose shared bias is learned.
     *
     * @param biases nodes of the bias in units of its standard deviation
     */
    static List<ProbitNode> withSpeeds(Design design, Priors priors, List<Node> biases) {
        return of(design, priors, biases, 0);
    }

    private static List<ProbitNode> of(Design design, Priors priors, List<Node> biases, double unknownBiasSd) {
        List<ProbitNode> probits = new ArrayList<>();
        for (int i = 0; i < design.scatter().size(); i++) {
            Node scatter = design.scatter().get(i);
            for (Node band : design.band()) {
                for (Node bias : biases) {
                    probits.add(new ProbitNode(
                            priors.scatterMedian() * FastMath.exp(priors.scatterLogSd() * scatter.value()),
                            priors.bandMedian() * FastMath.exp(priors.bandLogSd() * band.value()),
                            SpeedReading.BIAS_SD * bias.value(),
                            unknownBiasSd,
                            scatter.weight() * band.weight() * bias.weight(),
                            i));
                }
            }
        }
        return List.copyOf(probits);
    }

    /** A node of (σ, δ) where speeds do not matter. */
    static ProbitNode of(double sigma, double delta) {
        return new ProbitNode(sigma, delta, 0, 0, 1, 0);
    }

    /** This node of (σ, δ) at another node of the bias. */
    ProbitNode withBias(double other, double otherWeight) {
        return new ProbitNode(sigma, delta, other, 0, otherWeight, scatterNode);
    }

    /** Whether it is of the same (σ, δ). */
    boolean sameStrength(ProbitNode other) {
        return sigma == other.sigma && delta == other.delta;
    }

    /** Density, per ln, of a measured speed of a separation at log ratio x with log correction c. */
    double speedDensity(SpeedReading reading, double x, double c) {
        double speedSd = FastMath.hypot(reading.sd(), unknownBiasSd);
        double z = (reading.logSpeed() - reading.predicted().logSpeed(x - c) - bias) / speedSd;
        return FastMath.exp(-0.5 * z * z) / (speedSd * SQRT_2PI);
    }

    /**
     * Chance of an outcome of a firing at log ratio x at a joint of log correction c: with latent strength z = x − c +
     * σε, none for z &lt; 0, partial for 0 ≤ z &lt; δ, separated for z ≥ δ (ordered probit).
     */
    double chance(Outcome outcome, double x, double c) {
        double upper = (x - c) / sigma;
        return switch (outcome) {
            case NONE -> FastNormal.cdf(-upper);
            case SEPARATED -> FastNormal.cdf(upper - delta / sigma);
            case PARTIAL -> FastNormal.between(upper - delta / sigma, upper);
        };
    }

    /**
     * Writes the chances that a firing at log ratio x does not part the joint, and that it separates it, for every node of c;
     * what is left to 1 is the chance of a partial separation.
     */
    void ends(double x, Grid grid, double[] none, double[] separated) {
        double z = (x - grid.low()) / sigma;
        double step = grid.step() / sigma;
        double band = delta / sigma;
        for (int i = 0; i < none.length; i++) {
            none[i] = FastNormal.cdf(i * step - z);
            separated[i] = FastNormal.cdf(z - band - i * step);
        }
    }

    /** Writes the chances of an outcome of a firing at log ratio x for every node of c into {@code target}. */
    void chances(Outcome outcome, double x, Grid grid, double[] target) {
        double z = (x - grid.low()) / sigma;
        double step = grid.step() / sigma;
        double band = delta / sigma;
        switch (outcome) {
            case NONE -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = FastNormal.cdf(i * step - z);
                }
            }
            case SEPARATED -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = FastNormal.cdf(z - band - i * step);
                }
            }
            case PARTIAL -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = FastNormal.between(z - band - i * step, z - i * step);
                }
            }
        }
    }
}
