package org.sunder.engine.learning.posterior;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.quadrature.FastLog;
import org.sunder.engine.learning.quadrature.GaussianKernel;

/**
 * The way down the tree to one setup: what all the others say about its correction, times its own trials.
 *
 * <p>For every combination of hyperparameters the fleet's mean, given the other airframes, is smoothed by τₐ,
 * multiplied by the other joints' messages, smoothed by τⱼ, multiplied by the other setups' messages, smoothed by √(τₛ²
 * + sₓ²) and multiplied by the setup's own likelihood; then the τ's are summed out. Combinations whose density at
 * its peak is below 1e-7 of the best are left out. The bias of speeds is summed over the nodes that the airframe's own readings
 * need, see {@link BiasNodes}.
 */
final class DownwardPass {

    /** ln 1e-7. */
    private static final double NEGLIGIBLE = -16.1;

    private final Hierarchy levels;
    private final Design design;
    private final MeanLogLikelihood evidence;
    private final SetupPosition position;
    private final Optional<SingleSetupPass> chain;
    private final BiasNodes biases;
    private final double[] peaks;
    private final double best;

    DownwardPass(Hierarchy levels, MeanLogLikelihood evidence, SetupPosition position) {
        this.levels = levels;
        this.design = levels.design();
        this.evidence = evidence;
        this.position = position;
        this.chain = SingleSetupPass.find(levels, position.airframe());
        this.biases = BiasNodes.of(levels, position.airframe());
        this.peaks = evidence.peaks(levels);
        double highest = peaks[0];
        for (double peak : peaks) {
            highest = Math.max(highest, peak);
        }
        this.best = highest;
    }

    /**
     * One node of (σ, δ) and of the bias on the way down.
     *
     * @param upward the airframe's messages there
     * @param probit number of a node of the hierarchy with the same (σ, δ)
     * @param logWeight log prior weight against that node's
     * @param counts which combinations of the spreads count
     * @param others what the other airframes say there of the fleet's mean at its knots, by combination of the spreads
     */
    private record Row(
            UpwardPass upward, int probit, double logWeight, IntPredicate counts, IntFunction<double[]> others) {}

    /** What is made of a row. */
    @FunctionalInterface
    private interface Use {
        void take(int number, Row row);
    }

    LeafPosterior posterior() {
        double[][] mass = new double[biases.own().size()][];
        int combinations = forEachRow((number, row) -> mass[number] = leaf(row));
        IntStream.range(0, mass.length).forEach(r -> mass[r] = mass[r] == null ? new double[levels.nodes()] : mass[r]);
        return LeafPosterior.of(levels, biases.own(), mass, best, combinations);
    }

    /** What the joint says of any setup new to it, for which the position's input uncertainty stands by the way. */
    NewSetups newSetups() {
        double[][][] joints = new double[biases.own().size()][0][];
        int combinations = forEachRow((number, row) -> joints[number] = joint(row));
        return new NewSetups(levels, biases.own(), joints, best, combinations);
    }

    /** Goes through all rows that count, on all cores; answers with how many combinations counted. */
    private int forEachRow(Use use) {
        if (!biases.finer()) {
            return IntStream.range(0, levels.probits().size())
                    .parallel()
                    .map(r -> coarse(r, use))
                    .sum();
        }
        int strengths = levels.probits().size() / levels.biases();
        return IntStream.range(0, strengths)
                .parallel()
                .map(strength -> fine(strength, use))
                .sum();
    }

    /** A node of the hierarchy as it is. */
    private int coarse(int r, Use use) {
        int counted = counted(r);
        if (counted > 0) {
            UpwardPass upward = new UpwardPass(levels, levels.probits().get(r), position.airframe(), chain);
            use.take(r, new Row(upward, r, 0, spread -> counts(r, spread), others(r, upward)));
        }
        return counted;
    }

    /** A node of (σ, δ) at the airframe's own nodes of the bias. */
    private int fine(int strength, Use use) {
        int known = levels.biases();
        int first = strength * known;
        IntPredicate counts = spread -> IntStream.range(first, first + known).anyMatch(r -> counts(r, spread));
        int counted = (int) IntStream.range(0, design.spreads()).filter(counts).count();
        if (counted == 0) {
            return 0;
        }
        double[][][] others = new double[known][][];
        for (int b = 0; b < known; b++) {
            int r = first + b;
            UpwardPass upward = new UpwardPass(levels, levels.probits().get(r), position.airframe(), chain);
            IntFunction<double[]> at = others(r, upward);
            others[b] = IntStream.range(0, design.spreads()).mapToObj(at).toArray(double[][]::new);
        }
        double weight = levels.probits().get(first).weight();
        for (int b = 0; b < biases.perStrength(); b++) {
            int number = strength * biases.perStrength() + b;
            ProbitNode probit = biases.own().get(number);
            int node = b;
            use.take(
                    number,
                    new Row(
                            new UpwardPass(levels, probit, position.airframe(), chain),
                            first,
                            FastMath.log(probit.weight() / weight),
                            counts,
                            spread -> interpolated(others, node, spread)));
        }
        return counted * biases.perStrength();
    }

    private double[] interpolated(double[][][] others, int node, int spread) {
        double[] result = new double[design.knots()];
        for (int b = 0; b < others.length; b++) {
            double weight = biases.weights().get(node).get(b);
            double[] values = others[b][spread];
            for (int k = 0; k < result.length; k++) {
                result[k] += weight * values[k];
            }
        }
        return result;
    }

    /** What the other airframes say at a node of the hierarchy: all that is said less the airframe's own. */
    private IntFunction<double[]> others(int r, UpwardPass upward) {
        int knots = design.knots();
        long[] own = new long[design.spreads() * knots];
        if (position.airframe().hasTrials()) {
            MeanLogLikelihood.fill(
                    own,
                    0,
                    r,
                    upward,
                    levels,
                    biases.finer() ? cell -> true : cell -> counts(r, cell - levels.cell(r, 0, 0, 0)));
        }
        return spread -> evidence.without(own, spread * knots, r * design.spreads() + spread);
    }

    /** How many combinations with this probit count. */
    private int counted(int r) {
        return (int) IntStream.range(0, design.spreads())
                .filter(spread -> counts(r, spread))
                .count();
    }

    private boolean counts(int r, int spread) {
        return peaks[r * design.spreads() + spread] - best > NEGLIGIBLE;
    }

    private double[] leaf(Row row) {
        double[] sum = NewSetups.setup(levels, joint(row), position.inputSd());
        own(row.upward()).ifPresent(leaf -> multiply(sum, leaf));
        return sum;
    }

    /** Mass of the joint's correction, times the messages of its other setups, at each node of τₛ. */
    private double[][] joint(Row row) {
        double[][] joints = new double[design.setup().size()][levels.nodes()];
        for (int s = 0; s < joints.length; s++) {
            Message siblings = position.joint().isPresent()
                    ? row.upward().joint(s, position.joint().getAsInt(), position.setup())
                    : row.upward().flat();
            for (int j = 0; j < design.joint().size(); j++) {
                addTo(joints[s], airframe(row, s, j, siblings.exponent()), levels.joint(j));
            }
            multiply(joints[s], siblings);
        }
        return joints;
    }

    /** Mass of the airframe's correction at nodes of τₛ and τⱼ, summed over τₐ. */
    private double[] airframe(Row row, int s, int j, int siblingExponent) {
        Message others = row.upward().airframe(s, j, position.joint());
        int exponent = others.exponent() + siblingExponent;
        exponent += own(row.upward()).map(Message::exponent).orElse(0);
        double[] sum = new double[levels.nodes()];
        for (int a = 0; a < design.airframe().size(); a++) {
            int spread = levels.cell(0, s, j, a);
            if (row.counts().test(spread)) {
                int cell = levels.cell(row.probit(), s, j, a);
                MeanPosterior mean =
                        MeanLogLikelihood.mean(levels, cell, row.others().apply(spread));
                double weight = levels.logWeight(cell) + row.logWeight();
                double scale = FastMath.exp(mean.peak() + weight + exponent * FastLog.LN_2 - best);
                add(sum, mean.airframe(levels.airframe(a), levels.airframeSd(a)), scale);
            }
        }
        multiply(sum, others);
        return sum;
    }

    /** The likelihood of the setup's own trials, if it has any. */
    private Optional<Message> own(UpwardPass upward) {
        return position.setup().isPresent()
                ? Optional.of(upward.leaf(
                        position.joint().getAsInt(), position.setup().getAsInt()))
                : Optional.empty();
    }

    static void addTo(double[] sum, double[] mass, GaussianKernel kernel) {
        add(sum, kernel.density(mass), 1);
    }

    private static void add(double[] sum, double[] values, double scale) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += scale * values[i];
        }
    }

    private static void multiply(double[] mass, Message message) {
        if (!message.isFlat()) {
            double[] values = message.values();
            for (int i = 0; i < mass.length; i++) {
                mass[i] *= values[i];
            }
        }
    }
}
