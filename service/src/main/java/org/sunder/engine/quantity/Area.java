package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A area.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Area(BigDecimal value, AreaUnit unit) implements Quantity<AreaUnit> {

    /** A value in square metres. */
    public static Area ofSquareMetres(double si) {
        return new Area(BigDecimal.valueOf(si), AreaUnit.SQUARE_METRE);
    }

    /** The value in square metres. */
    public double squareMetres() {
        return si();
    }

    /** The same area in another unit, rounded to significant digits. */
    public Area in(AreaUnit other, int digits) {
        return new Area(rounded(other, digits), other);
    }
}
