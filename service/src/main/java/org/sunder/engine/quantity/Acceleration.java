package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * An acceleration.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Acceleration(BigDecimal value, AccelerationUnit unit) implements Quantity<AccelerationUnit> {

    /** A value in metres per second squared. */
    public static Acceleration ofMetresPerSecondSquared(double si) {
        return new Acceleration(BigDecimal.valueOf(si), AccelerationUnit.METRE_PER_SECOND_SQUARED);
    }

    /** The value in metres per second squared. */
    public double metresPerSecondSquared() {
        return si();
    }

    /** The same acceleration in another unit, rounded to significant digits. */
    public Acceleration in(AccelerationUnit other, int digits) {
        return new Acceleration(rounded(other, digits), other);
    }
}
