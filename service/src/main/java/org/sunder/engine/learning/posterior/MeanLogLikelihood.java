package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.quadrature.Downsampled;
import org.sunder.engine.learning.quadrature.FastLog;
import org.sunder.engine.learning.quadrature.GaussianKernel;

/**
 * What airframes say about the fleet's mean μ: the log likelihood at the knots of μ for every combination of (σ, δ,
 * τₛ, τⱼ, τₐ), summed over airframes.
 *
 * <p>The sums are whole numbers of 2⁻²⁴, so adding and taking away airframes is exact, in any order: the evidence of
 * all others is the sum less one's own, and a new trial changes one airframe's term only. One term is held to
 * ±10,000 and its rounding is 3e-8; 10,000 airframes fit. Immutable.
 */
final class MeanLogLikelihood {

    private static final double UNIT = 0x1p-24;
    private static final double PER_UNIT = 0x1p24;
    /** A log likelihood below this is held here; far beyond what could count. */
    private static final double FLOOR = -1e4;

    /** [probits], of each a row of knots for every combination of the spreads. */
    private final PackedRows[] sums;

    private final int knots;
    private final int spreads;
    /** Made when first asked for, the same whoever makes it; nobody changes it. */
    private double @Nullable [] peaks;

    private MeanLogLikelihood(PackedRows[] sums, Design design) {
        this.sums = sums;
        this.knots = design.knots();
        this.spreads = design.spreads();
    }

    /** The evidence of many airframes. */
    static MeanLogLikelihood of(List<AirframeLog> logs, Hierarchy levels) {
        return sum(
                levels,
                r -> new long[levels.design().spreads() * levels.design().knots()],
                logs,
                1);
    }

    /** Memory of the sums and their peaks, in kilobytes. */
    int kilobytes() {
        long bytes = Arrays.stream(sums).mapToLong(PackedRows::size).sum();
        return (int) ((bytes + (long) sums.length * spreads * Double.BYTES) / 1024);
    }

    /** This evidence with one airframe's own added. */
    MeanLogLikelihood plus(AirframeLog log, Hierarchy levels) {
        return log.hasTrials() ? sum(levels, r -> sums[r].all(), List.of(log), 1) : this;
    }

    /** This evidence with one airframe's own taken away. */
    MeanLogLikelihood minus(AirframeLog log, Hierarchy levels) {
        return log.hasTrials() ? sum(levels, r -> sums[r].all(), List.of(log), -1) : this;
    }

    /** An airframe with trials, and its short way where it has one. */
    private record Term(AirframeLog log, Optional<SingleSetupPass> chain) {}

    /**
     * Airframes' log likelihoods, times a sign, added to sums.
     *
     * @param before the sums so far at a probit, which are added to
     */
    private static MeanLogLikelihood sum(
            Hierarchy levels, IntFunction<long[]> before, List<AirframeLog> logs, long sign) {
        Design design = levels.design();
        List<Term> terms = logs.stream()
                .filter(AirframeLog::hasTrials)
                .map(log -> new Term(log, SingleSetupPass.find(levels, log)))
                .toList();
        PackedRows[] sums = new PackedRows[levels.probits().size()];
        int biases = levels.biases();
        IntStream.range(0, sums.length / biases).parallel().forEach(strength -> {
            long[][] result = new long[biases][];
            Arrays.setAll(result, b -> before.apply(strength * biases + b));
            long[] own = new long[design.spreads() * design.knots()];
            for (Term term : terms) {
                for (int b = 0; b < biases; b++) {
                    if (b == 0 || term.log().hasSpeeds()) { // without a measured speed their bias does not matter
                        int r = strength * biases + b;
                        UpwardPass upward =
                                new UpwardPass(levels, levels.probits().get(r), term.log(), term.chain());
                        fill(own, 0, r, upward, levels, cell -> true);
                    }
                    add(own, sign, result[b]);
                }
            }
            for (int b = 0; b < biases; b++) {
                sums[strength * biases + b] = PackedRows.of(result[b], design.knots());
            }
        });
        return new MeanLogLikelihood(sums, design);
    }

    private static void add(long[] own, long sign, long[] sums) {
        for (int i = 0; i < own.length; i++) {
            sums[i] += sign * own[i];
        }
    }

    /**
     * Writes one airframe's log likelihood at the knots of μ, in units, for every combination with probit r.
     *
     * @param target [τₛ × τⱼ × τₐ × knots] from {@code start} on
     * @param wanted which combinations are needed; others may be left as they are
     */
    static void fill(long[] target, int start, int r, UpwardPass upward, Hierarchy levels, IntPredicate wanted) {
        if (upward.chain().isPresent()) {
            upward.chain().get().fill(target, start, upward);
            return;
        }
        Design design = levels.design();
        int from = levels.cell(r, 0, 0, 0);
        for (int s = 0; s < design.setup().size(); s++) {
            for (int j = 0; j < design.joint().size(); j++) {
                Message message = upward.airframe(s, j, OptionalInt.empty());
                Downsampled downsampled = new Downsampled(message.values());
                for (int a = 0; a < design.airframe().size(); a++) {
                    int cell = levels.cell(r, s, j, a);
                    if (wanted.test(cell)) {
                        round(
                                logsAtKnots(downsampled, message.exponent(), levels.airframe(a), design),
                                target,
                                start + (cell - from) * design.knots());
                    }
                }
            }
        }
    }

    /**
     * One airframe's log likelihood at the knots of μ. Where the kernel gives fewer values than there are knots, the
     * log is interpolated by cubics: it is nearly quadratic.
     */
    static double[] logsAtKnots(Downsampled likelihood, int exponent, GaussianKernel kernel, Design design) {
        int stride = kernel.stride();
        int skip = Math.max(1, design.knotStride() / stride);
        int first = Math.max(0, design.firstKnot() / stride - 2);
        int nodes = (design.corrections().size() - 1) / stride + 1;
        int last = Math.min(nodes - 1, (design.lastKnot() + stride - 1) / stride + 2);
        double[] logs = kernel.sampled(likelihood, first, skip, (last - first) / skip + 1);
        for (int i = 0; i < logs.length; i++) {
            logs[i] = logs[i] < Double.MIN_NORMAL
                    ? FLOOR
                    : Math.max(FastLog.log(logs[i]) + exponent * FastLog.LN_2, FLOOR);
        }
        int spacing = stride * skip;
        while (spacing > design.knotStride()) {
            logs = upsampled(logs);
            spacing /= 2;
        }
        int offset = (design.firstKnot() - first * stride) / spacing;
        double[] result = new double[design.knots()];
        for (int k = 0; k < result.length; k++) {
            result[k] = logs[offset + k * (design.knotStride() / spacing)];
        }
        return result;
    }

    /** Writes log likelihoods in units. */
    static void round(double[] logs, long[] target, int start) {
        for (int k = 0; k < logs.length; k++) {
            target[start + k] = (long) Math.rint(logs[k] * PER_UNIT);
        }
    }

    private static double[] upsampled(double[] logs) {
        double[] result = new double[2 * logs.length - 1];
        for (int i = 0; i < logs.length; i++) {
            result[2 * i] = logs[i];
        }
        for (int i = 1; i < logs.length - 2; i++) {
            boolean known = Math.min(logs[i - 1], logs[i + 2]) > FLOOR;
            result[2 * i + 1] = known
                    ? GaussianKernel.midpoint(logs[i - 1], logs[i], logs[i + 1], logs[i + 2])
                    : Math.min(logs[i], logs[i + 1]);
        }
        int last = logs.length - 1;
        result[1] = (logs[0] + logs[1]) / 2;
        result[2 * last - 1] = (logs[last - 1] + logs[last]) / 2;
        return result;
    }

    /** Log of the density of μ at its peak, prior and weight included, for every combination. */
    double[] peaks(Hierarchy levels) {
        double[] known = peaks;
        if (known == null) {
            known = findPeaks(levels);
            peaks = known;
        }
        return known;
    }

    private double[] findPeaks(Hierarchy levels) {
        double[] result = new double[sums.length * spreads];
        IntStream.range(0, result.length)
                .parallel()
                .forEach(cell -> result[cell] = mean(levels, cell, at(cell)).peak() + levels.logWeight(cell));
        return result;
    }

    /** The fleet's mean at one combination, given the log likelihood at its knots. */
    static MeanPosterior mean(Hierarchy levels, int cell, double[] likelihood) {
        return new MeanPosterior(
                levels.design(), levels.mean(cell / levels.design().spreads()), likelihood);
    }

    /** Log likelihood at the knots of one combination. */
    double[] at(int cell) {
        return without(new long[knots], 0, cell);
    }

    /** Log likelihood at the knots of one combination, less an airframe's own term, which begins at {@code start}. */
    double[] without(long[] own, int start, int cell) {
        long[] sum = new long[knots];
        sums[cell / spreads].read(cell % spreads, sum, 0);
        double[] result = new double[knots];
        for (int k = 0; k < result.length; k++) {
            result[k] = (sum[k] - own[start + k]) * UNIT;
        }
        return result;
    }
}
