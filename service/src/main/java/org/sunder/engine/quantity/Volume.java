package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A volume.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Volume(BigDecimal value, VolumeUnit unit) implements Quantity<VolumeUnit> {

    /** A value in cubic metres, held in litres. */
    public static Volume ofCubicMetres(double si) {
        return new Volume(BigDecimal.valueOf(si).scaleByPowerOfTen(3), VolumeUnit.LITRE);
    }

    /** The value in cubic metres. */
    public double cubicMetres() {
        return si();
    }

    /** The same volume in another unit, rounded to significant digits. */
    public Volume in(VolumeUnit other, int digits) {
        return new Volume(rounded(other, digits), other);
    }
}
