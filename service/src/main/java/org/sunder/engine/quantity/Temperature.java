package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A temperature.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Temperature(BigDecimal value, TemperatureUnit unit) implements Quantity<TemperatureUnit> {

    /** A value in kelvins, held in degrees Celsius. */
    public static Temperature ofKelvins(double si) {
        return new Temperature(
                BigDecimal.valueOf(si).subtract(TemperatureUnit.DEGREE_CELSIUS.offset()),
                TemperatureUnit.DEGREE_CELSIUS);
    }

    /** The value in kelvins. */
    public double kelvins() {
        return si();
    }

    /** The same temperature in another unit, rounded to significant digits. */
    public Temperature in(TemperatureUnit other, int digits) {
        return new Temperature(rounded(other, digits), other);
    }
}
