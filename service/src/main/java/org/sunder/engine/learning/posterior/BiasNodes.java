package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * The nodes of the speeds' bias b at which one airframe's own readings are worked out.
 *
 * <p>Problem: given b, a joint's readings hold its correction to within s = (Σ 1/sd²)^(−1/2); a sum over nodes of b further
 * apart than about 2.5 s leaves a comb in place of a density. What other airframes say of b is smooth, since their own
 * corrections are not known: its logarithm is nearly quadratic. So it is kept at the few nodes of the {@link Hierarchy} and
 * interpolated by Lagrange's formula (M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 25.2.1), and only the
 * airframe asked about is worked out at as many nodes as its readings need.
 *
 * @param own nodes for each (σ, δ), those of one after another
 * @param perStrength nodes of b for each (σ, δ)
 * @param weights of the hierarchy's nodes for the value at each own node, [own nodes][nodes of the hierarchy]; empty where the
 *     own nodes are those of the hierarchy
 */
record BiasNodes(List<ProbitNode> own, int perStrength, List<List<Double>> weights) {

    /** Where the nodes of the hierarchy do: they lie 0.2 apart, and one reading of 10 % is found to 0.001 by them. */
    private static final double COARSE = 0.08;
    /** Largest distance of two nodes, in units of s; what is left of the comb moves no quantile by more than s/50. */
    private static final double SPACING = 2.5;
    /** How far the nodes reach, in standard deviations of b. */
    private static final double REACH = 3.6;
    /** With 41 nodes s may be 0.011: seven readings of 3 % at one joint. */
    private static final int MOST = 20;

    BiasNodes {
        own = List.copyOf(own);
        weights = List.copyOf(weights);
    }

    /** Those that an airframe's readings need. */
    static BiasNodes of(Hierarchy levels, AirframeLog airframe) {
        double resolution = 1 / FastMath.sqrt(airframe.mostSpeedPrecision());
        if (!levels.speeds() || resolution >= COARSE) {
            return new BiasNodes(levels.probits(), levels.biases(), List.of());
        }
        // Less a little, so that the order in which precisions were added decides nothing.
        int half = (int) FastMath.ceil(REACH * SpeedReading.BIAS_SD / (SPACING * resolution) - 1e-6);
        half = FastMath.min(half, MOST);
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
                        .map(node -> lagrange(known, node.bias()))
                        .toList());
    }

    private static List<Double> lagrange(List<Double> known, double at) {
        List<Double> result = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            double weight = 1;
            for (int k = 0; k < known.size(); k++) {
                weight *= k == i ? 1 : (at - known.get(k)) / (known.get(i) - known.get(k));
            }
            result.add(weight);
        }
        return List.copyOf(result);
    }

    /** Whether there are more than in the hierarchy. */
    boolean finer() {
        return !weights.isEmpty();
    }
}
