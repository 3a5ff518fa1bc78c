package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.quadrature.Downsampled;
import org.sunder.engine.learning.quadrature.GaussianKernel;

/**
 * What an airframe with one tested setup says of the fleet's mean, quickly.
 *
 * <p>Such a setup's correction differs from the mean by one normal of variance τₐ² + τⱼ² + τₛ² + sₓ². The log likelihood
 * at the knots of μ is a smooth function of that variance's logarithm: it is worked out at few variances, [variances ×
 * knots], and interpolated for every combination of the spreads by Lagrange's formula on six equally spaced nodes (M.
 * Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 25.2.1). Valid where the variance is at least that of one
 * step of the grid.
 */
final class SingleSetupPass {

    /** Largest distance of two nodes of ln(variance). */
    private static final double STEP = 0.3;

    private static final int POINTS = 6;
    /** With more tests than this the log likelihood is too steep to be interpolated. */
    private static final int MOST_TRIALS = 30;
    /** How far, in ln, an interpolated value may lie outside those of the two nodes beside it. */
    private static final double SLACK = 0.5;

    private final Hierarchy levels;
    private final int joint;
    private final int setup;
    private final List<GaussianKernel> kernels = new ArrayList<>();
    /** For every combination of τₛ, τⱼ, τₐ: the node below it, its first node and their weights. */
    private final int[] below;

    private final int[] first;

    private final double[][] weights;

    private SingleSetupPass(Hierarchy levels, int joint, int setup, double[] variances, double low, double high) {
        this.levels = levels;
        this.joint = joint;
        this.setup = setup;
        int count = Math.max(POINTS, (int) Math.ceil((high - low) / STEP) + 1);
        double step = (high - low) / (count - 1);
        for (int i = 0; i < count; i++) {
            kernels.add(GaussianKernel.of(
                    FastMath.exp(0.5 * (low + i * step)), levels.design().corrections()));
        }
        this.below = new int[variances.length];
        this.first = new int[variances.length];
        this.weights = new double[variances.length][];
        for (int i = 0; i < variances.length; i++) {
            double at = (FastMath.log(variances[i]) - low) / step;
            below[i] = Math.min((int) at, count - 2);
            first[i] = Math.min(Math.max(below[i] - POINTS / 2 + 1, 0), count - POINTS);
            weights[i] = lagrange(at - first[i]);
        }
    }

    /** The chain of an airframe; none where it has more than one tested setup, or where a chain is no gain. */
    static Optional<SingleSetupPass> find(Hierarchy levels, AirframeLog log) {
        if (log.comparesJoints() || log.comparesSetups() || !log.hasTrials()) {
            return Optional.empty();
        }
        int joint = 0;
        while (log.joints().get(joint).testedSetups() == 0) {
            joint++;
        }
        List<SetupLog> setups = log.joints().get(joint).setups();
        int setup = 0;
        while (setups.get(setup).trials().isEmpty()) {
            setup++;
        }
        return setups.get(setup).trials().size() > MOST_TRIALS
                ? Optional.empty()
                : find(levels, joint, setup, setups.get(setup).inputSd());
    }

    private static Optional<SingleSetupPass> find(Hierarchy levels, int joint, int setup, double inputSd) {
        double[] variances = variances(levels, inputSd);
        double least = variances[0];
        double most = variances[0];
        for (double variance : variances) {
            least = Math.min(least, variance);
            most = Math.max(most, variance);
        }
        double step = levels.design().corrections().step();
        if (least < step * step || !(most > least)) {
            return Optional.empty();
        }
        SingleSetupPass chain =
                new SingleSetupPass(levels, joint, setup, variances, FastMath.log(least), FastMath.log(most));
        return chain.kernels.size() < variances.length ? Optional.of(chain) : Optional.empty();
    }

    private static double[] variances(Hierarchy levels, double inputSd) {
        Design design = levels.design();
        double[] result = new double[design.spreads()];
        for (int s = 0; s < design.setup().size(); s++) {
            for (int j = 0; j < design.joint().size(); j++) {
                for (int a = 0; a < design.airframe().size(); a++) {
                    double upper = FastMath.hypot(levels.airframeSd(a), levels.jointSd(j));
                    double sd = FastMath.hypot(upper, levels.setupSd(s, inputSd));
                    result[levels.cell(0, s, j, a)] = sd * sd;
                }
            }
        }
        return result;
    }

    /** Weights of the nodes 0 to 5 for the value at {@code at}. */
    private static double[] lagrange(double at) {
        double[] result = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            result[i] = 1;
            for (int k = 0; k < POINTS; k++) {
                if (k != i) {
                    result[i] *= (at - k) / (i - k);
                }
            }
        }
        return result;
    }

    /** Writes the log likelihood, in units, at the knots of every combination of the spreads. */
    void fill(long[] target, int start, UpwardPass upward) {
        Design design = levels.design();
        Message leaf = upward.leaf(joint, setup);
        Downsampled downsampled = new Downsampled(leaf.values());
        double[][] logs = kernels.stream()
                .map(kernel -> MeanLogLikelihood.logsAtKnots(downsampled, leaf.exponent(), kernel, design))
                .toArray(double[][]::new);
        double[] sum = new double[design.knots()];
        for (int cell = 0; cell < first.length; cell++) {
            interpolate(logs, first[cell], weights[cell], sum);
            hold(sum, logs[below[cell]], logs[below[cell] + 1]);
            MeanLogLikelihood.round(sum, target, start + cell * sum.length);
        }
    }

    /** One pass over the knots for all nodes: sums in memory would cost more than the products. */
    private static void interpolate(double[][] logs, int first, double[] weights, double[] target) {
        double[] a = logs[first];
        double[] b = logs[first + 1];
        double[] c = logs[first + 2];
        double[] d = logs[first + 3];
        double[] e = logs[first + 4];
        double[] f = logs[first + 5];
        double wa = weights[0];
        double wb = weights[1];
        double wc = weights[2];
        double wd = weights[3];
        double we = weights[4];
        double wf = weights[5];
        for (int k = 0; k < target.length; k++) {
            target[k] = wa * a[k] + wb * b[k] + wc * c[k] + wd * d[k] + we * e[k] + wf * f[k];
        }
    }

    private static void hold(double[] sum, double[] one, double[] other) {
        for (int k = 0; k < sum.length; k++) {
            double least = Math.min(one[k], other[k]) - SLACK;
            double most = Math.max(one[k], other[k]) + SLACK;
            sum[k] = Math.min(Math.max(sum[k], least), most);
        }
    }
}
