package org.sunder.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A decimal value with its unit, kept as it was written; conversions go through SI in 34 decimal digits.
 *
 * @param <U> the units of the dimension
 */
public interface Quantity<U extends Unit> {

    /** The number as written. */
    BigDecimal value();

    /** Its unit. */
    U unit();

    /** The value in the SI unit of the dimension, as the engine computes with it. */
    default double si() {
        return exactSi().doubleValue();
    }

    /** The value in SI, exact to 34 digits. */
    default BigDecimal exactSi() {
        // Rounding at once keeps a hostile exponent (1e999999999) from being written out in full.
        return value().add(unit().offset(), MathContext.DECIMAL128).multiply(unit().factor(), MathContext.DECIMAL128);
    }

    /** The value expressed in another unit of the same dimension, exact to 34 digits. */
    default BigDecimal valueIn(U other) {
        return exactSi()
                .divide(other.factor(), MathContext.DECIMAL128)
                .subtract(other.offset(), MathContext.DECIMAL128);
    }

    /**
     * The value in another unit, rounded to a number of significant digits, with no trailing zeros beyond a whole number.
     *
     * @param other the unit to express it in
     * @param digits significant digits, at least 1
     */
    default BigDecimal rounded(U other, int digits) {
        BigDecimal r = valueIn(other).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        r = r.stripTrailingZeros();
        boolean writable = r.precision() - r.scale() <= MathContext.DECIMAL128.getPrecision();
        return r.scale() < 0 && writable ? r.setScale(0) : r;
    }
}
