package org.sunder.airframe;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.sunder.engine.quantity.Area;
import org.sunder.engine.quantity.AreaUnit;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.PressureUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/**
 * Computed values in the units a flyer reads, rounded to four significant digits: more would claim what nobody knows.
 *
 * @param units metric or US customary
 */
public record Display(UnitSystem units) {

    private static final int DIGITS = 4;
    private static final int FINEST = 6;

    /** An area, from square metres. */
    public Area area(double squareMetres) {
        return Area.ofSquareMetres(squareMetres)
                .in(metric() ? AreaUnit.SQUARE_CENTIMETRE : AreaUnit.SQUARE_INCH, DIGITS);
    }

    /** A volume, from cubic metres. */
    public Volume volume(double cubicMetres) {
        return Volume.ofCubicMetres(cubicMetres).in(metric() ? VolumeUnit.LITRE : VolumeUnit.CUBIC_INCH, DIGITS);
    }

    /** A length of a part or a hole, from metres. */
    public Length length(double metres) {
        return Length.ofMetres(metres).in(metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH, DIGITS);
    }

    /** A length outdoors, such as an altitude, from metres. */
    public Length altitude(double metres) {
        return Length.ofMetres(metres).in(metric() ? LengthUnit.METRE : LengthUnit.FOOT, DIGITS);
    }

    /** A force, from newtons. */
    public Force force(double newtons) {
        return Force.ofNewtons(newtons).in(metric() ? ForceUnit.NEWTON : ForceUnit.POUND_FORCE, DIGITS);
    }

    /** A pressure, from pascals. */
    public Pressure pressure(double pascals) {
        return Pressure.ofPascals(pascals)
                .in(metric() ? PressureUnit.KILOPASCAL : PressureUnit.POUND_PER_SQUARE_INCH, DIGITS);
    }

    /** A speed, from metres per second. */
    public Speed speed(double metresPerSecond) {
        return Speed.ofMetresPerSecond(metresPerSecond)
                .in(metric() ? SpeedUnit.METRE_PER_SECOND : SpeedUnit.FOOT_PER_SECOND, DIGITS);
    }

    /** A charge that lies on the measure's grid, with as many decimals as the measure has. */
    public static Mass onMeasure(double kilograms, Mass measure) {
        BigDecimal steps = BigDecimal.valueOf(Math.round(kilograms / measure.kilograms()));
        return new Mass(steps.multiply(measure.value()), measure.unit());
    }

    /** A charge between the marks, with one decimal more than the measure has. */
    public static Mass charge(double kilograms, Mass measure) {
        return rounded(kilograms, measure, RoundingMode.HALF_EVEN);
    }

    /** A limit of the charge, never rounded up. */
    public static Mass limit(double kilograms, Mass measure) {
        return rounded(kilograms, measure, RoundingMode.DOWN);
    }

    /** A charge between the marks as people read it: {@link #charge} with the digits of the measure. */
    public static Mass near(double kilograms, Mass measure) {
        Mass charge = charge(kilograms, measure);
        return new Mass(charge.value().setScale(digits(measure), RoundingMode.HALF_EVEN), charge.unit());
    }

    /** A limit of the charge as people read it, with the digits of the measure and never rounded up. */
    public static Mass never(double kilograms, Mass measure) {
        return inDigits(kilograms, measure, digits(measure), RoundingMode.DOWN);
    }

    private static int digits(Mass measure) {
        return Math.max(0, measure.value().scale());
    }

    private static Mass rounded(double kilograms, Mass measure, RoundingMode mode) {
        return inDigits(kilograms, measure, Math.min(FINEST, digits(measure) + 1), mode);
    }

    private static Mass inDigits(double kilograms, Mass measure, int digits, RoundingMode mode) {
        BigDecimal value = Mass.ofKilograms(kilograms).valueIn(measure.unit()).setScale(digits, mode);
        return new Mass(value, measure.unit());
    }

    private boolean metric() {
        return units == UnitSystem.METRIC;
    }
}
