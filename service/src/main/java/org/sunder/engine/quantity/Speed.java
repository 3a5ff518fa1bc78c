package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A speed.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Speed(BigDecimal value, SpeedUnit unit) implements Quantity<SpeedUnit> {

    /** A value in metres per second. */
    public static Speed ofMetresPerSecond(double si) {
        return new Speed(BigDecimal.valueOf(si), SpeedUnit.METRE_PER_SECOND);
    }

    /** The value in metres per second. */
    public double metresPerSecond() {
        return si();
    }

    /** The same speed in another unit, rounded to significant digits. */
    public Speed in(SpeedUnit other, int digits) {
        return new Speed(rounded(other, digits), other);
    }
}
