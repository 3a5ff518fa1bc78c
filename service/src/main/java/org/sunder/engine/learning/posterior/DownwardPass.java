package org.sunder.engine.learning.posterior;

import java.util.Optional;
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
 * its peak is below 1e-7 of the best are left out.
 */
final class DownwardPass {

    /** ln 1e-7. */
    private static final double NEGLIGIBLE = -16.1;

    private final Hierarchy levels;
    private final Design design;
    private final MeanLogLikelihood evidence;
    private final SetupPosition position;
    private final Optional<SingleSetupPass> chain;
    private final double[] peaks;
    private final double best;

    DownwardPass(Hierarchy levels, MeanLogLikelihood evidence, SetupPosition position) {
        this.levels = levels;
        this.design = levels.design();
        this.evidence = evidence;
        this.position = position;
        this.chain = SingleSetupPass.find(levels, position.airframe());
        this.peaks = evidence.peaks(levels);
        double highest = peaks[0];
        for (double peak : peaks) {
            highest = Math.max(highest, peak);
        }
        this.best = highest;
    }

    LeafPosterior posterior() {
        double[][] mass = new double[levels.probits().size()][];
        IntStream.range(0, mass.length)
                .parallel()
                .forEach(r -> mass[r] = counted(r) > 0 ? probit(r) : new double[levels.nodes()]);
        return LeafPosterior.of(levels, mass, best, combinations());
    }

    /** How many combinations with this probit count. */
    private int counted(int r) {
        int spreads = design.spreads();
        return (int) IntStream.range(r * spreads, (r + 1) * spreads)
                .filter(this::counts)
                .count();
    }

    private boolean counts(int cell) {
        return peaks[cell] - best > NEGLIGIBLE;
    }

    /** What the joint says of any setup new to it, for which the position's input uncertainty stands by the way. */
    NewSetups newSetups() {
        double[][][] joints = new double[levels.probits().size()][][];
        IntStream.range(0, joints.length)
                .parallel()
                .forEach(r -> joints[r] = counted(r) > 0 ? joint(r, upward(r)) : new double[0][]);
        return new NewSetups(levels, joints, best, combinations());
    }

    private int combinations() {
        return IntStream.range(0, levels.probits().size()).map(this::counted).sum();
    }

    private UpwardPass upward(int r) {
        return new UpwardPass(levels, r, position.airframe(), chain);
    }

    private double[] probit(int r) {
        UpwardPass upward = upward(r);
        double[] sum = NewSetups.setup(levels, joint(r, upward), position.inputSd());
        own(upward).ifPresent(leaf -> multiply(sum, leaf));
        return sum;
    }

    /** Mass of the joint's correction, times the messages of its other setups, at each node of τₛ. */
    private double[][] joint(int r, UpwardPass upward) {
        long[] own = new long[design.spreads() * design.knots()];
        if (position.airframe().hasTrials()) {
            MeanLogLikelihood.fill(own, 0, r, upward, levels, this::counts);
        }
        double[][] joints = new double[design.setup().size()][levels.nodes()];
        for (int s = 0; s < joints.length; s++) {
            Message siblings = position.joint().isPresent()
                    ? upward.joint(s, position.joint().getAsInt(), position.setup())
                    : upward.flat();
            for (int j = 0; j < design.joint().size(); j++) {
                addTo(joints[s], airframe(r, s, j, upward, own, siblings.exponent()), levels.joint(j));
            }
            multiply(joints[s], siblings);
        }
        return joints;
    }

    /** Mass of the airframe's correction at nodes of τₛ and τⱼ, summed over τₐ. */
    private double[] airframe(int r, int s, int j, UpwardPass upward, long[] own, int siblingExponent) {
        Message others = upward.airframe(s, j, position.joint());
        int exponent = others.exponent() + siblingExponent;
        exponent += own(upward).map(Message::exponent).orElse(0);
        double[] sum = new double[levels.nodes()];
        for (int a = 0; a < design.airframe().size(); a++) {
            int cell = levels.cell(r, s, j, a);
            if (counts(cell)) {
                int knots = design.knots();
                int ownStart = (cell - levels.cell(r, 0, 0, 0)) * knots;
                MeanPosterior mean =
                        MeanLogLikelihood.mean(levels, cell, evidence.without(own, ownStart, cell * knots, knots));
                double scale = FastMath.exp(mean.peak() + levels.logWeight(cell) + exponent * FastLog.LN_2 - best);
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
