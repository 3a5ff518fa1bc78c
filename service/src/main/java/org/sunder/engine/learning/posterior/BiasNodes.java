package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * The nodes of the speeds' bias b over which an answer is summed.
 *
 * <p>Problem: given b, a joint's readings hold its correction to within s = (Σ 1/sd²)^(−1/2), and the outcomes of all joints
 * together hold b itself; a sum over nodes of b further apart than what is told leaves a comb in place of a density. But each
 * airframe's messages at each node are dear. What airframes say of the fleet's mean at a given b is smooth in b, its logarithm
 * nearly quadratic but for where a trial is taken for a lapse. So it is kept at the nodes of the {@link Hierarchy} and
 * interpolated by the cubic through the four nearest (M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 25.2.13;
 * one polynomial through all nodes swings between them where a lapse is likely), and only the airframe asked about is worked
 * out at as many nodes as are needed.
 *
 * @param own nodes for each (σ, δ), those of one after another
 * @param perStrength nodes of b for each (σ, δ)
 * @param weights of the hierarchy's nodes for the value at each own node, [own nodes][nodes of the hierarchy]; empty where the
 *     own nodes are those of the hierarchy
 */
record BiasNodes(List<ProbitNode> own, int perStrength, List<List<Double>> weights) {

    /** Where few nodes do: one reading of 10 % is found to 0.004 by them, and so it always was. */
    private static final double COARSE = 0.08;

    private static final List<Node> FEW = QuadratureRules.normalGauss(5);
    /** Near enough for what lies between them: the posteriors of {@code BiasNodesTest} are within 0.003 of the true ones. */
    private static final List<Node> MANY = QuadratureRules.normal(0.72, 5);

    /** Largest distance of two nodes, in units of s; what is left of the comb moves no quantile by more than s/50. */
    private static final double SPACING = 2.5;
    /** How far the nodes reach, in standard deviations of b. */
    private static final double REACH = 3.6;
    /** Nodes on either side of the middle one, however little the own readings tell: those of other airframes tell of b. */
    private static final int LEAST = 8;
    /** With 41 nodes s may be 0.011: seven readings of 3 % at one joint. */
    private static final int MOST = 20;
    /** Nodes that a value is interpolated from. */
    private static final int NEAREST = 4;

    BiasNodes {
        own = List.copyOf(own);
        weights = List.copyOf(weights);
    }

    /** Nodes of the bias, in units of its standard deviation, at which what airframes say is kept; none without speeds. */
    static List<Node> kept(FleetLog log) {
        return log.airframes().stream()
                .map(BiasNodes::kept)
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    /** Those that an airframe alone would need. */
    static List<Node> kept(AirframeLog airframe) {
        if (!airframe.hasSpeeds()) {
            return List.of();
        }
        return 1 / FastMath.sqrt(airframe.mostSpeedPrecision()) >= COARSE ? FEW : MANY;
    }

    /** Those that an answer about an airframe is summed over. */
    static BiasNodes of(Hierarchy levels, AirframeLog airframe) {
        if (levels.biases() <= FEW.size()) {
            return new BiasNodes(levels.probits(), levels.biases(), List.of());
        }
        // Less a little, so that the order in which precisions were added decides nothing.
        double needed = REACH * SpeedReading.BIAS_SD / SPACING * FastMath.sqrt(airframe.mostSpeedPrecision()) - 1e-6;
        int half = FastMath.min(FastMath.max((int) FastMath.ceil(needed), LEAST), MOST);
        if (2 * half + 1 <= levels.biases()) {
            return new BiasNodes(levels.probits(), levels.biases(), List.of());
        }
        List<Node> biases = QuadratureRules.normal(REACH / half, half);
        List<ProbitNode> own = new ArrayList<>();
        int coarse = levels.biases();
        for (int r = 0; r < levels.probits().size(); r += coarse) {
            ProbitNode any = levels.probits().get(r);
            double strength = 0;
            for (int b = 0; b < coarse; b++) {
                strength += levels.probits().get(r + b).weight();
            }
            for (Node bias : biases) {
                own.add(any.withBias(SpeedReading.BIAS_SD * bias.value(), strength * bias.weight()));
            }
        }
        List<Double> known = levels.probits().subList(0, coarse).stream()
                .map(ProbitNode::bias)
                .toList();
        return new BiasNodes(
                own,
                biases.size(),
                own.subList(0, biases.size()).stream()
                        .map(node -> cubic(known, node.bias()))
                        .toList());
    }

    /** Weights of values at equidistant nodes for the cubic through the four nearest. */
    private static List<Double> cubic(List<Double> known, double at) {
        double step = known.get(1) - known.get(0);
        int below = (int) Math.floor((at - known.get(0)) / step);
        int first = Math.max(0, Math.min(below - 1, known.size() - NEAREST));
        List<Double> result = new ArrayList<>(Collections.nCopies(known.size(), 0.0));
        for (int i = first; i < first + NEAREST; i++) {
            double weight = 1;
            for (int k = first; k < first + NEAREST; k++) {
                weight *= k == i ? 1 : (at - known.get(k)) / (known.get(i) - known.get(k));
            }
            result.set(i, weight);
        }
        return List.copyOf(result);
    }

    /** Whether there are more than in the hierarchy. */
    boolean finer() {
        return !weights.isEmpty();
    }
}
