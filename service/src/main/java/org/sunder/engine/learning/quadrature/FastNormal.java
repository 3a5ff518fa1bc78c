package org.sunder.engine.learning.quadrature;

import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * The standard normal distribution function, fast and the same to the last bit on every machine.
 *
 * <p>Problem: a posterior asks for Φ some 100,000 times. Method: cubic Hermite interpolation of Φ, with its derivative
 * φ, on steps of 1/128. Valid for every z; below −37 the answer is 0, above 9 it is 1. Relative error in the left tail
 * about z⁴ · 1e-11 (the interpolation error h⁴/384 · Φ⁗), absolute error below 1e-11.
 */
public final class FastNormal {

    /** Table points per unit of z. */
    private static final int PER_UNIT = 128;
    /** Lowest z of the table; Φ(−37) is 5.7e-300, near the smallest normal double. */
    private static final int LOW = -37;
    /** Highest z of the table; 1 − Φ(9) is 1e-19. */
    private static final int HIGH = 9;

    private static final int LAST = (HIGH - LOW) * PER_UNIT;
    private static final double INV_SQRT_2PI = 0.3989422804014327;
    private static final double[] CDF = new double[LAST + 2];
    private static final double[] SLOPE = new double[LAST + 2];

    static {
        for (int i = 1; i < CDF.length; i++) {
            double z = LOW + (double) i / PER_UNIT;
            CDF[i] = 0.5 * Erf.erfc(-z * FastMath.sqrt(0.5));
            SLOPE[i] = INV_SQRT_2PI * FastMath.exp(-0.5 * z * z) / PER_UNIT;
        }
    }

    private FastNormal() {}

    /** Φ(z), the chance that a standard normal variable is below z. */
    public static double cdf(double z) {
        double position = Math.min(Math.max((z - LOW) * PER_UNIT, 0), LAST);
        int i = (int) position;
        double t = position - i;
        double rise = CDF[i + 1] - CDF[i];
        double bend = SLOPE[i] + SLOPE[i + 1] - 2 * rise;
        return CDF[i] + t * (SLOPE[i] + t * (rise - SLOPE[i] - bend * (1 - t)));
    }

    /** Φ(upper) − Φ(lower) without cancellation in either tail. */
    public static double between(double lower, double upper) {
        return lower + upper > 0 ? cdf(-lower) - cdf(-upper) : cdf(upper) - cdf(lower);
    }
}
