package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A length.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Length(BigDecimal value, LengthUnit unit) implements Quantity<LengthUnit> {

    /** A value in metres. */
    public static Length ofMetres(double si) {
        return new Length(BigDecimal.valueOf(si), LengthUnit.METRE);
    }

    /** The value in metres. */
    public double metres() {
        return si();
    }

    /** The same length in another unit, rounded to significant digits. */
    public Length in(LengthUnit other, int digits) {
        return new Length(rounded(other, digits), other);
    }
}
