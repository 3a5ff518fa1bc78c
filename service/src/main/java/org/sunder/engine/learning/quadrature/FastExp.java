package org.sunder.engine.learning.quadrature;

import org.hipparchus.util.FastMath;

/**
 * The exponential function, fast and the same to the last bit on every machine.
 *
 * <p>Problem: a posterior asks for some 500,000 densities given by their logarithms. Method: the argument is split into k ·
 * ln 2 / 256 + r, |r| at most 0.00136; 2^(k/256) is taken from a table and a power of two, e^r from its Taylor series to r⁴;
 * what is left out, r⁵/120, is below 4e-17. Valid for every argument up to 700; below −700 the answer is 0. Relative error
 * below 1e-13.
 */
public final class FastExp {

    private static final int BITS = 8;
    private static final int SIZE = 1 << BITS;
    private static final double PER_UNIT = SIZE / 0.6931471805599453;
    private static final double UNIT = 0.6931471805599453 / SIZE;
    private static final double LEAST = -700;
    private static final double[] POWER = new double[SIZE];

    static {
        for (int i = 0; i < SIZE; i++) {
            POWER[i] = FastMath.exp(i * UNIT);
        }
    }

    private FastExp() {}

    /** e^x. */
    public static double exp(double x) {
        if (x < LEAST) {
            return 0;
        }
        int k = (int) Math.rint(x * PER_UNIT);
        double r = x - k * UNIT;
        double series = 1 + r * (1 + r * (0.5 + r * (1 / 6.0 + r / 24)));
        return POWER[k & (SIZE - 1)] * series * Double.longBitsToDouble((long) ((k >> BITS) + 1023) << 52);
    }
}
