package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A mass.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Mass(BigDecimal value, MassUnit unit) implements Quantity<MassUnit> {

    /** A value in kilograms. */
    public static Mass ofKilograms(double si) {
        return new Mass(BigDecimal.valueOf(si), MassUnit.KILOGRAM);
    }

    /** The value in kilograms. */
    public double kilograms() {
        return si();
    }

    /** The same mass in another unit, rounded to significant digits. */
    public Mass in(MassUnit other, int digits) {
        return new Mass(rounded(other, digits), other);
    }
}
