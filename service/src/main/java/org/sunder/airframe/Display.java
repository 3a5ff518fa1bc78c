package org.sunder.airframe;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
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
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/**
 * Computed values in the units a flyer reads, rounded to four significant digits: more would claim what nobody knows. What
 * people read has fewer: charges the digits of their measure, limits of them rounded down, volumes and forces three digits,
 * depths a millimetre or a sixteenth of an inch. {@code decimal.js} has the same rules for what a page fills in itself.
 *
 * @param units metric or US customary
 */
public record Display(UnitSystem units) {

    private static final int DIGITS = 4;
    private static final int FINEST = 6;
    private static final int BRIEF = 3;
    private static final int ROUGH = 2;
    private static final double INCH = 0.0254; // m
    private static final int SIXTEENTHS = 16;

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
        return near(charge(kilograms, measure), measure);
    }

    /** A charge that an answer names as people read it, with the digits of the measure. */
    public static Mass near(Mass charge, Mass measure) {
        return inDigits(charge, measure, digits(measure), RoundingMode.HALF_EVEN);
    }

    /** A charge as it was loaded, with the digits of the measure at least. */
    public static Mass loaded(Mass charge, Mass measure) {
        boolean padded = charge.unit() == measure.unit() && charge.value().scale() < digits(measure);
        return padded ? new Mass(charge.value().setScale(digits(measure)), charge.unit()) : charge;
    }

    /** A limit of the charge as people read it, with the digits of the measure and never rounded up. */
    public static Mass never(double kilograms, Mass measure) {
        return inDigits(kilograms, measure, digits(measure), RoundingMode.DOWN);
    }

    /** A limit that an answer names as people read it, with the digits of the measure and never rounded up. */
    public static Mass never(Mass limit, Mass measure) {
        return inDigits(limit, measure, digits(measure), RoundingMode.DOWN);
    }

    /** "0.85 g". */
    public static String words(Quantity<?> quantity) {
        return words(quantity.value(), quantity);
    }

    /** A computed volume, force, area or pressure as people read it: three digits. */
    public static String brief(Quantity<?> quantity) {
        return words(quantity, BRIEF);
    }

    /** What is computed from a rule of practice as people read it: two digits. */
    public static String rough(Quantity<?> quantity) {
        return words(quantity, ROUGH);
    }

    /** A length along the axis, from metres, as people read it: to a millimetre or a sixteenth of an inch. */
    public String depth(double metres) {
        if (metric()) {
            return Math.round(1000 * metres) + " mm";
        }
        long sixteenths = Math.round(metres / INCH * SIXTEENTHS);
        long whole = sixteenths / SIXTEENTHS;
        long part = sixteenths % SIXTEENTHS;
        long by = BigInteger.valueOf(part).gcd(BigInteger.valueOf(SIXTEENTHS)).longValue();
        String fraction = part == 0 ? "" : part / by + "/" + SIXTEENTHS / by;
        return (whole == 0 && part != 0 ? fraction : part == 0 ? "" + whole : whole + " " + fraction) + " in";
    }

    private static String words(Quantity<?> quantity, int digits) {
        return words(quantity.value().round(new MathContext(digits, RoundingMode.HALF_EVEN)), quantity);
    }

    private static String words(BigDecimal value, Quantity<?> quantity) {
        return value.toPlainString() + " " + raised(quantity.unit().toString());
    }

    /** A unit with its last figure raised, if it ends with one: "cm²". */
    private static String raised(String unit) {
        int last = unit.length() - 1;
        if (last < 1 || !Character.isLowerCase(unit.charAt(last - 1))) {
            return unit;
        }
        return switch (unit.charAt(last)) {
            case '2' -> unit.substring(0, last) + '²';
            case '3' -> unit.substring(0, last) + '³';
            default -> unit;
        };
    }

    private static int digits(Mass measure) {
        return Math.max(0, measure.value().scale());
    }

    private static Mass rounded(double kilograms, Mass measure, RoundingMode mode) {
        return inDigits(kilograms, measure, Math.min(FINEST, digits(measure) + 1), mode);
    }

    private static Mass inDigits(double kilograms, Mass measure, int digits, RoundingMode mode) {
        return inDigits(Mass.ofKilograms(kilograms), measure, digits, mode);
    }

    private static Mass inDigits(Mass charge, Mass measure, int digits, RoundingMode mode) {
        return new Mass(charge.valueIn(measure.unit()).setScale(digits, mode), measure.unit());
    }

    private boolean metric() {
        return units == UnitSystem.METRIC;
    }
}
