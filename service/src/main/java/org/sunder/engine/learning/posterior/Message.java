package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import org.sunder.engine.learning.quadrature.GaussianKernel;

/**
 * A likelihood of a correction on the grid of c, as mantissas [nodes] times a power of two, so that many trials cannot
 * underflow and scaling is exact. Immutable; nobody changes the array after it was handed in.
 */
final class Message {

    /** Mantissas are rescaled when their largest falls below this, 2⁻⁶⁴. */
    private static final double SMALL = 0x1p-64;

    private final double[] values;
    private final int exponent;
    private final boolean flat;

    private Message(double[] values, int exponent, boolean flat) {
        this.values = values;
        this.exponent = exponent;
        this.flat = flat;
    }

    /** The message of no trial: 1 everywhere. */
    static Message flat(int nodes) {
        double[] ones = new double[nodes];
        Arrays.fill(ones, 1);
        return new Message(ones, 0, true);
    }

    static Message of(double[] values, int exponent) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, value);
        }
        if (largest >= SMALL || largest == 0) {
            return new Message(values, exponent, false);
        }
        int shift = -Math.getExponent(largest);
        double[] scaled = new double[values.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = Math.scalb(values[i], shift);
        }
        return new Message(scaled, exponent - shift, false);
    }

    Message times(Message other) {
        if (flat || other.flat) {
            return flat ? other : this;
        }
        double[] product = new double[values.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = values[i] * other.values[i];
        }
        return of(product, exponent + other.exponent);
    }

    Message smoothed(GaussianKernel kernel) {
        return flat || kernel.isIdentity() ? this : new Message(kernel.likelihood(values), exponent, false);
    }

    boolean isFlat() {
        return flat;
    }

    double[] values() {
        return values;
    }

    int exponent() {
        return exponent;
    }
}
