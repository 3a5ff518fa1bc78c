package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A force.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Force(BigDecimal value, ForceUnit unit) implements Quantity<ForceUnit> {

    /** A value in newtons. */
    public static Force ofNewtons(double si) {
        return new Force(BigDecimal.valueOf(si), ForceUnit.NEWTON);
    }

    /** The value in newtons. */
    public double newtons() {
        return si();
    }

    /** The same force in another unit, rounded to significant digits. */
    public Force in(ForceUnit other, int digits) {
        return new Force(rounded(other, digits), other);
    }
}
