package org.sunder.engine.learning;

import org.hipparchus.util.FastMath;

/**
 * Convolution with a Gaussian on a grid.
 *
 * <p>Problem: pass a function of a child's correction to its parent, or back. Method: Gaussian weights sampled at the
 * nodes and scaled to add to 1, out to 5.5 standard deviations. The sum is exact to exp(−2π² sd²/step²) for smooth
 * functions, and becomes the identity for a standard deviation far below the step. Arrays have the grid's size.
 */
final class Smoothing {

    /** Standard deviations after which the kernel is cut off; 4e-8 of it is lost. */
    private static final double REACH = 5.5;

    private final double[] taps;

    private Smoothing(double[] taps) {
        this.taps = taps;
    }

    static Smoothing of(double sd, double step) {
        double ratio = sd / step;
        int half = ratio < 0.1 ? 0 : (int) Math.ceil(REACH * ratio);
        double[] taps = new double[half + 1];
        double sum = 1;
        taps[0] = 1;
        for (int k = 1; k <= half; k++) {
            taps[k] = FastMath.exp(-0.5 * (k / ratio) * (k / ratio));
            sum += 2 * taps[k];
        }
        for (int k = 0; k <= half; k++) {
            taps[k] /= sum;
        }
        return new Smoothing(taps);
    }

    boolean isIdentity() {
        return taps.length == 1;
    }

    /** Smooths a likelihood, which goes on at its edge value beyond the grid; {@code from} to {@code to} exclusive. */
    double[] likelihood(double[] values, int from, int to) {
        return smooth(values, values[0], values[values.length - 1], from, to);
    }

    /** Smooths a density, which is 0 beyond the grid. */
    double[] density(double[] values) {
        return isIdentity() ? values : smooth(values, 0, 0, 0, values.length);
    }

    private double[] smooth(double[] values, double left, double right, int from, int to) {
        int n = to - from;
        int half = taps.length - 1;
        double[] padded = new double[n + 2 * half];
        for (int i = 0; i < padded.length; i++) {
            int at = from + i - half;
            padded[i] = at < 0 ? left : at >= values.length ? right : values[at];
        }
        double[] result = new double[n];
        for (int i = 0; i < n; i++) {
            result[i] = taps[0] * padded[i + half];
        }
        for (int k = 1; k <= half; k++) {
            addShifted(result, padded, taps[k], half - k, half + k);
        }
        return result;
    }

    private static void addShifted(double[] result, double[] padded, double tap, int below, int above) {
        for (int i = 0; i < result.length; i++) {
            result[i] += tap * (padded[i + below] + padded[i + above]);
        }
    }
}
