package org.sunder.engine.learning.quadrature;

import org.hipparchus.util.FastMath;

/**
 * The natural logarithm, fast and the same to the last bit on every machine.
 *
 * <p>Problem: a new test asks for some 200,000 logarithms of likelihoods. Method: the argument is split into m · 2ᵉ with m
 * in [1, 2), ln m taken from a table of 256 midpoints and a Taylor series of ln(1 + r), |r| at most 2⁻⁹, to r⁴; what is
 * left out, r⁵/5, is below 6e-15. Valid for positive normal doubles; absolute error below 1e-14 relative to 1 + |ln v|.
 */
public final class FastLog {

    private static final int BITS = 8;
    private static final int SHIFT = 52 - BITS;
    /** ln 2. */
    public static final double LN_2 = 0.6931471805599453;

    private static final long MANTISSA = (1L << 52) - 1;
    private static final long ONE = Double.doubleToRawLongBits(1.0);
    private static final double[] LOG = new double[1 << BITS];
    private static final double[] INVERSE = new double[1 << BITS];

    static {
        for (int i = 0; i < LOG.length; i++) {
            double middle = 1 + (i + 0.5) / LOG.length;
            LOG[i] = FastMath.log(middle);
            INVERSE[i] = 1 / middle;
        }
    }

    private FastLog() {}

    /** ln v of a positive normal double. */
    public static double log(double v) {
        long bits = Double.doubleToRawLongBits(v);
        int exponent = (int) (bits >>> 52) - 1023;
        int i = (int) ((bits & MANTISSA) >>> SHIFT);
        double mantissa = Double.longBitsToDouble((bits & MANTISSA) | ONE);
        double r = mantissa * INVERSE[i] - 1;
        return exponent * LN_2 + LOG[i] + r * (1 - r * (1 / 2.0 - r * (1 / 3.0 - r / 4)));
    }
}
