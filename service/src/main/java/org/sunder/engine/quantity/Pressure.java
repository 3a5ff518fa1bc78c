package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A pressure.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Pressure(BigDecimal value, PressureUnit unit) implements Quantity<PressureUnit> {

    /** A value in pascals. */
    public static Pressure ofPascals(double si) {
        return new Pressure(BigDecimal.valueOf(si), PressureUnit.PASCAL);
    }

    /** The value in pascals. */
    public double pascals() {
        return si();
    }

    /** The same pressure in another unit, rounded to significant digits. */
    public Pressure in(PressureUnit other, int digits) {
        return new Pressure(rounded(other, digits), other);
    }
}
