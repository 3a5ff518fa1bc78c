package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.quadrature.FastNormal;
import org.sunder.engine.learning.quadrature.Grid;

/**
 * The posterior mass of the log correction c at one node of (σ, δ): mass [nodes] on the grid of c.
 *
 * <p>Between nodes the density is taken as smooth: cumulative mass by a four-point rule, between nodes by cubic Hermite
 * interpolation with the density as its slope.
 */
final class CorrectionMass {

    /** Mass of a node that does not count when charges are compared. */
    private static final double TINY = 1e-8;

    /** Share of the mass below which nodes at either end are passed over. */
    private static final double NOTHING = 1e-14;

    /** Φ(−7) is 1.3e-12. */
    private static final double SURE = 7;

    private final ProbitNode probit;
    private final Grid grid;
    private final double[] mass;
    private final double sum;
    private final int first;
    private final Grid support;
    /** Mass up to each node, from one before the first; made when first asked for, the same whoever makes it. */
    private double @Nullable [] cumulative;

    private double @Nullable [] before;

    CorrectionMass(ProbitNode probit, Grid grid, double[] mass) {
        this.probit = probit;
        this.grid = grid;
        this.mass = mass;
        double total = 0;
        for (double value : mass) {
            total += value;
        }
        this.sum = total;
        int from = 0;
        int to = mass.length;
        while (from + 2 < to && mass[from] <= NOTHING * total) {
            from++;
        }
        while (to - 2 > from && mass[to - 1] <= NOTHING * total) {
            to--;
        }
        this.first = from;
        this.support = new Grid(grid.node(from), grid.step(), to - from);
    }

    ProbitNode probit() {
        return probit;
    }

    Grid grid() {
        return grid;
    }

    double mass() {
        return sum;
    }

    int size() {
        return mass.length;
    }

    /** The same density on every {@code stride}-th node, the nodes of no mass at either end cut off. */
    CorrectionMass thinned(int stride) {
        int from = 0;
        int to = mass.length;
        while (from + stride < to && mass[from] < TINY) {
            from += stride;
        }
        while (to - stride > from && mass[to - 1] < TINY) {
            to--;
        }
        int size = Math.max(2, (to - from + stride - 1) / stride);
        double[] result = new double[size];
        for (int i = 0; i < size; i++) {
            result[i] = massAt(from + i * stride) * stride;
        }
        return new CorrectionMass(probit, new Grid(grid.node(from), grid.step() * stride, size), result);
    }

    double massAt(int i) {
        return i < 0 || i >= mass.length ? 0 : mass[i];
    }

    CorrectionMass scaled(double factor) {
        double[] result = new double[mass.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = mass[i] * factor;
        }
        return new CorrectionMass(probit, grid, result);
    }

    boolean sameStrength(CorrectionMass other) {
        return probit.sameStrength(other.probit);
    }

    CorrectionMass plus(CorrectionMass other) {
        double[] result = mass.clone();
        for (int i = 0; i < result.length; i++) {
            result[i] += other.mass[i];
        }
        return new CorrectionMass(probit, grid, result);
    }

    /** The posterior mass after a trial, unnormalised; nodes of no mass stay so. */
    CorrectionMass after(Trial trial, double lapse) {
        double[] known = Arrays.copyOfRange(mass, first, first + support.size());
        UpwardPass.multiply(known, probit, trial, lapse, support);
        double[] result = new double[mass.length];
        System.arraycopy(known, 0, result, first, known.length);
        return new CorrectionMass(probit, grid, result);
    }

    /** The mass before a trial that it has seen, unnormalised. */
    CorrectionMass without(Trial trial, double lapse) {
        double[] likelihood = new double[support.size()];
        Arrays.fill(likelihood, 1);
        UpwardPass.multiply(likelihood, probit, trial, lapse, support);
        double[] result = new double[mass.length];
        for (int i = 0; i < likelihood.length; i++) {
            result[first + i] = mass[first + i] / likelihood[i];
        }
        return new CorrectionMass(probit, grid, result);
    }

    /** Chance, times the mass, of an outcome of a firing at log ratio x. */
    double chance(Outcome outcome, double x) {
        return switch (outcome) {
            case NONE -> sum - strengthReached(x);
            case SEPARATED -> strengthReached(x - probit.delta());
            case PARTIAL -> Math.max(0, strengthReached(x) - strengthReached(x - probit.delta()));
        };
    }

    /**
     * ∑ mass · Φ((x − c)/σ): Φ is worked out only where it is neither 0 nor 1 to 1e-12, which for a small σ is at few nodes.
     */
    private double strengthReached(double x) {
        double[] sums = plainSums();
        double reach = SURE * probit.sigma();
        int from = support.nodeAbove(x - reach);
        int to = support.nodeAbove(x + reach);
        double total = sums[from];
        double z = (x - support.low()) / probit.sigma();
        double step = support.step() / probit.sigma();
        for (int i = from; i < to; i++) {
            total += mass[first + i] * FastNormal.cdf(z - i * step);
        }
        return total;
    }

    /** Mass of the support's nodes before each; made when first asked for, the same whoever makes it. */
    private double[] plainSums() {
        double[] sums = before;
        if (sums == null) {
            sums = new double[support.size() + 1];
            for (int i = 0; i < support.size(); i++) {
                sums[i + 1] = sums[i] + mass[first + i];
            }
            before = sums;
        }
        return sums;
    }

    double firstMoment() {
        double total = 0;
        for (int i = 0; i < mass.length; i++) {
            total += mass[i] * grid.node(i);
        }
        return total;
    }

    double secondMoment(double about) {
        double total = 0;
        for (int i = 0; i < mass.length; i++) {
            double off = grid.node(i) - about;
            total += mass[i] * off * off;
        }
        return total;
    }

    double edge(int nodes) {
        double total = 0;
        for (int i = 0; i < nodes; i++) {
            total += mass[i] + mass[mass.length - 1 - i];
        }
        return total;
    }

    double density(double c) {
        double position = (c - grid.low()) / grid.step();
        int i = (int) Math.floor(position);
        double t = position - i;
        return (massAt(i) * (1 - t) + massAt(i + 1) * t) / grid.step();
    }

    /** Mass below c. */
    double below(double c) {
        double position = (c - grid.low()) / grid.step();
        if (position <= -1) {
            return 0;
        }
        if (position >= mass.length) {
            return sum;
        }
        int i = (int) Math.floor(position);
        double before = upTo(i);
        double cell = cell(i);
        double t = position - i;
        double bend = massAt(i) + massAt(i + 1) - 2 * cell;
        return before + t * (massAt(i) + t * (cell - massAt(i) - bend * (1 - t)));
    }

    /** Mass from the start of the grid to node i; i from −1. */
    private double upTo(int i) {
        double[] sums = cumulative;
        if (sums == null) {
            sums = new double[mass.length + 1];
            for (int k = -1; k < mass.length - 1; k++) {
                sums[k + 2] = sums[k + 1] + cell(k);
            }
            cumulative = sums;
        }
        return sums[i + 1];
    }

    /** Mass between nodes i and i + 1: ∫ of the cubic through four nodes. */
    private double cell(int i) {
        return (13 * (massAt(i) + massAt(i + 1)) - massAt(i - 1) - massAt(i + 2)) / 24;
    }
}
