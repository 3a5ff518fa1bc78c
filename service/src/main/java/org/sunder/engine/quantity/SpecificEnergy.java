package org.sunder.engine.quantity;

import java.math.BigDecimal;

/**
 * A specific energy (powder force).
 *
 * @param value the number as written
 * @param unit its unit
 */
public record SpecificEnergy(BigDecimal value, SpecificEnergyUnit unit) implements Quantity<SpecificEnergyUnit> {

    /** A value in joules per kilogram. */
    public static SpecificEnergy ofJoulesPerKilogram(double si) {
        return new SpecificEnergy(BigDecimal.valueOf(si), SpecificEnergyUnit.JOULE_PER_KILOGRAM);
    }

    /** The value in joules per kilogram. */
    public double joulesPerKilogram() {
        return si();
    }

    /** The same specific energy (powder force) in another unit, rounded to significant digits. */
    public SpecificEnergy in(SpecificEnergyUnit other, int digits) {
        return new SpecificEnergy(rounded(other, digits), other);
    }
}
