package org.sunder.engine.physics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Sensible bounds of every input, and the domain of the model; this project's choices, in SI. */
public final class SetupBounds {

    public static final Range INNER_DIAMETER = new Range(0.010, 1, "10 mm to 1 m");
    public static final Range SEGMENT_LENGTH = new Range(0.001, 5, "1 mm to 5 m");
    public static final Range OGIVE_RADIUS = new Range(0.005, 1000, "5 mm to 1000 m");
    public static final Range DEPTH = new Range(0, 5, "0 to 5 m, no deeper than the cavity");
    public static final Range DIAMETER = new Range(0.001, 1, "1 mm to 1 m, no wider than the cavity at the joint");
    public static final Range SOLID_VOLUME = new Range(1e-9, 1, "0.001 mL to 1000 L");
    public static final Range FABRIC_MASS = new Range(1e-4, 50, "0.1 g to 50 kg");
    public static final Range PIN_COUNT = new Range(1, 48, "1 to 48");
    public static final Range SHEAR_STRENGTH = new Range(1e6, 1e9, "1 MPa to 1000 MPa");
    public static final Range PIN_FORCE = new Range(0.1, 50_000, "0.1 N to 50 kN");
    public static final Range PULL_TESTS = new Range(2, 10_000, "2 to 10000");
    public static final Range FIT_FORCE = new Range(0, 5000, "0 to 5000 N");
    public static final Range POWDER_FORCE = new Range(1e4, 1e6, "10 to 1000 kJ/kg");
    public static final Range RELATIVE_UNCERTAINTY = new Range(0, 1, "0 to 1");
    public static final Range SHOULDER = new Range(0.001, 2, "1 mm to 2 m");
    public static final Range MEASURE = new Range(1e-6, 5e-3, "0.001 g to 5 g");
    public static final Range PART_MASS = new Range(0.001, 1000, "1 g to 1000 kg");
    public static final Range PRESSURE_LIMIT = new Range(1000, 5e6, "1 kPa to 5 MPa");
    public static final Range SPEED_LIMIT = new Range(0.1, 300, "0.1 to 300 m/s");
    public static final Range LIST_LENGTH = new Range(0, 50, "at most 50 entries");

    /** Greatest free volume the model answers for, m³. */
    public static final double DOMAIN_VOLUME = 0.2;

    /** Greatest charge the model answers for, kg. */
    public static final double DOMAIN_CHARGE = 0.050;

    /** Greatest gauge pressure the model answers for, Pa. */
    public static final double DOMAIN_PRESSURE = 1e6;

    /** Least retention in all, N; under it a joint falls open. */
    public static final double LEAST_RETENTION = 1;

    private SetupBounds() {}

    /** Four significant digits, without an exponent for the sizes met here. */
    public static String brief(double value) {
        return brief(value, new MathContext(4));
    }

    /** Three significant digits, for what nobody knows better. */
    public static String rough(double value) {
        return brief(value, new MathContext(3));
    }

    /** As {@link #brief(double)}, never rounded up: for what must not be exceeded. */
    public static String briefDown(double value) {
        return brief(value, new MathContext(4, RoundingMode.DOWN));
    }

    private static String brief(double value, MathContext digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
