package org.sunder.engine.learning.posterior;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sunder.engine.learning.quadrature.Grid;

/**
 * What is known of the speeds' bias b where the log correction is c, at one node of (σ, δ): mean and variance at each node of
 * c. Readings say how c and b add up, so that either is known once the other is; given c what is left of b is nearly normal.
 */
final class BiasMoments {

    private final Grid grid;
    private final double[] mass;
    private final double[] mean;
    private final double[] square;

    private BiasMoments(Grid grid) {
        this.grid = grid;
        this.mass = new double[grid.size()];
        this.mean = new double[grid.size()];
        this.square = new double[grid.size()];
    }

    /** By the node that stands for all of the same (σ, δ): the first of them. */
    static Map<ProbitNode, BiasMoments> of(List<CorrectionMass> masses) {
        Map<ProbitNode, BiasMoments> moments = new LinkedHashMap<>();
        ProbitNode strength = null;
        for (CorrectionMass each : masses) {
            ProbitNode probit = each.probit();
            if (strength == null || !strength.sameStrength(probit)) {
                strength = probit;
            }
            moments.computeIfAbsent(strength, any -> new BiasMoments(each.grid()))
                    .add(each);
        }
        return moments;
    }

    private void add(CorrectionMass other) {
        double bias = other.probit().bias();
        double within = other.probit().unknownBiasSd() * other.probit().unknownBiasSd();
        for (int i = 0; i < mass.length; i++) {
            double more = other.massAt(i);
            mass[i] += more;
            mean[i] += more * bias;
            square[i] += more * (within + bias * bias);
        }
    }

    private int node(double c) {
        return (int) Math.round((c - grid.low()) / grid.step());
    }

    /** Mean of b at the node of the grid that c is. */
    double mean(double c) {
        int i = node(c);
        return mass[i] > 0 ? mean[i] / mass[i] : 0;
    }

    /** Variance of b there. */
    double variance(double c) {
        int i = node(c);
        double expected = mean(c);
        return mass[i] > 0 ? Math.max(0, square[i] / mass[i] - expected * expected) : 0;
    }
}
