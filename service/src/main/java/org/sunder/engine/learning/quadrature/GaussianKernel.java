package org.sunder.engine.learning.quadrature;

import org.hipparchus.util.FastMath;

/**
 * Convolution with a Gaussian on a grid.
 *
 * <p>Problem: pass a function of a child's correction to its parent, or back. Method: Gaussian weights sampled at the
 * nodes and scaled to add to 1, out to 5 standard deviations. The sum is exact to exp(−2π² sd²/step²) for smooth
 * functions, and becomes the identity for a standard deviation far below the step. A wide Gaussian works on a coarser
 * grid: the function is halved by the weights ¼, ½, ¼ until the standard deviation is 3 to 6 coarse steps, the variance
 * that this adds (½ step² each time) is taken off the Gaussian's, and the result is brought back by cubic
 * interpolation (a Gaussian pyramid; P. J. Burt, Comput. Graph. Image Process. 16 (1981) 20). Arrays have the grid's
 * size.
 */
public final class GaussianKernel {

    /** Standard deviations after which the kernel is cut off; 6e-7 of it is lost. */
    private static final double REACH = 5;
    /** Fewest coarse steps per standard deviation. */
    private static final double COARSE = 3;
    /** Below this many steps a Gaussian is the identity. */
    private static final double NARROW = 0.1;

    private final int stride;
    private final double[] taps;

    private GaussianKernel(int stride, double[] taps) {
        this.stride = stride;
        this.taps = taps;
    }

    public static GaussianKernel of(double sd, Grid grid) {
        double variance = (sd / grid.step()) * (sd / grid.step());
        int stride = 1;
        while ((grid.size() - 1) % (2 * stride) == 0) {
            double left = variance - 0.5 * stride * stride;
            if (left < 4.0 * stride * stride * COARSE * COARSE) {
                break;
            }
            variance = left;
            stride *= 2;
        }
        return new GaussianKernel(stride, taps(FastMath.sqrt(variance) / stride));
    }

    private static double[] taps(double ratio) {
        int half = ratio < NARROW ? 0 : (int) Math.ceil(REACH * ratio);
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
        return taps;
    }

    public boolean isIdentity() {
        return taps.length == 1;
    }

    /** Distance, in nodes, of the coarse nodes of {@link #sampled}. */
    public int stride() {
        return stride;
    }

    /** Smooths a likelihood, which goes on at its edge values beyond the grid. */
    public double[] likelihood(double[] values) {
        return isIdentity() ? values : refined(coarse(values, true), true);
    }

    /**
     * The smoothed likelihood on every {@code skip}-th of its coarse nodes, which lie {@link #stride()} nodes apart.
     *
     * @param first first coarse node
     * @param count how many values
     */
    public double[] sampled(Downsampled likelihood, int first, int skip, int count) {
        int half = taps.length - 1;
        double[][] phases = phases(likelihood.level(stride), first - half, skip, (count - 1) * skip + 2 * half + 1);
        double[] result = new double[count];
        double[] centre = phases[half % skip];
        for (int i = 0; i < count; i++) {
            result[i] = taps[0] * centre[half / skip + i];
        }
        for (int k = 1; k <= half; k++) {
            int below = half - k;
            int above = half + k;
            addShifted(result, phases[below % skip], below / skip, phases[above % skip], above / skip, taps[k]);
        }
        return result;
    }

    /** The values from {@code from} on, edge values going on beyond the array, dealt out to {@code skip} arrays. */
    private static double[][] phases(double[] values, int from, int skip, int length) {
        double[][] result = new double[skip][(length + skip - 1) / skip];
        int last = values.length - 1;
        for (int phase = 0; phase < skip; phase++) {
            double[] dealt = result[phase];
            int at = from + phase;
            for (int i = 0; i < dealt.length; i++, at += skip) {
                dealt[i] = values[at < 0 ? 0 : Math.min(at, last)];
            }
        }
        return result;
    }

    /** Smooths a density, which is 0 beyond the grid. */
    public double[] density(double[] values) {
        return isIdentity() ? values : refined(coarse(values, false), false);
    }

    private double[] coarse(double[] values, boolean extend) {
        double[] halved = values;
        for (int s = 1; s < stride; s *= 2) {
            halved = halve(halved, extend);
        }
        return smooth(halved, extend);
    }

    public static double[] halve(double[] values, boolean extend) {
        double[] result = new double[(values.length + 1) / 2];
        int last = result.length - 1;
        for (int k = 1; k < last; k++) {
            result[k] = 0.5 * values[2 * k] + 0.25 * (values[2 * k - 1] + values[2 * k + 1]);
        }
        double first = values[0];
        double end = values[values.length - 1];
        result[0] = 0.5 * first + 0.25 * (values[1] + (extend ? first : 0));
        result[last] = 0.5 * end + 0.25 * (values[values.length - 2] + (extend ? end : 0));
        return result;
    }

    private double[] smooth(double[] values, boolean extend) {
        int n = values.length;
        int half = taps.length - 1;
        double[] padded = new double[n + 2 * half];
        System.arraycopy(values, 0, padded, half, n);
        if (extend) {
            for (int i = 0; i < half; i++) {
                padded[i] = values[0];
                padded[half + n + i] = values[n - 1];
            }
        }
        double[] result = new double[n];
        for (int i = 0; i < n; i++) {
            result[i] = taps[0] * values[i];
        }
        for (int k = 1; k <= half; k++) {
            addShifted(result, padded, half - k, padded, half + k, taps[k]);
        }
        return result;
    }

    private static void addShifted(double[] result, double[] left, int below, double[] right, int above, double tap) {
        for (int i = 0; i < result.length; i++) {
            result[i] += tap * (left[i + below] + right[i + above]);
        }
    }

    private double[] refined(double[] values, boolean extend) {
        double[] result = values;
        for (int s = stride; s > 1; s /= 2) {
            result = upsampled(result, extend);
        }
        return result;
    }

    /** Values at twice as many nodes, by cubic interpolation that does not go below 0. */
    private static double[] upsampled(double[] values, boolean extend) {
        int n = values.length;
        double[] result = new double[2 * n - 1];
        for (int k = 0; k < n; k++) {
            result[2 * k] = values[k];
        }
        for (int k = 1; k < n - 2; k++) {
            result[2 * k + 1] = Math.max(0, midpoint(values[k - 1], values[k], values[k + 1], values[k + 2]));
        }
        double before = extend ? values[0] : 0;
        double after = extend ? values[n - 1] : 0;
        result[1] = Math.max(0, midpoint(before, values[0], values[1], values[2]));
        result[2 * n - 3] = Math.max(0, midpoint(values[n - 3], values[n - 2], values[n - 1], after));
        return result;
    }

    /** Cubic interpolation halfway between b and c of four equally spaced values. */
    public static double midpoint(double a, double b, double c, double d) {
        return (9 * (b + c) - a - d) / 16;
    }
}
