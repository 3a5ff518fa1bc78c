package org.sunder.engine.physics.cavity;

import java.util.Optional;

/**
 * The Haack series: θ = acos(1 − 2x/L), y = R/√π·√(θ − sin 2θ/2 + C·sin³θ), volume πR²L·(1/2 + 3C/16).
 *
 * @param c the parameter C from 0 to 2/3, beyond which the profile bulges past its base
 */
public record HaackSeries(double c) implements NoseProfile {

    /** C = 0: least drag for a given length and diameter (von Kármán). */
    public static final HaackSeries VON_KARMAN = new HaackSeries(0);

    /** C = 1/3: least drag for a given length and volume. */
    public static final HaackSeries LENGTH_VOLUME = new HaackSeries(1.0 / 3);

    // A little above 2/3, so that a rounded 0.667 is accepted; the bulge is then under a millionth.
    private static final double LARGEST_C = 0.667;

    @Override
    public double radius(double x, double baseRadius, double length) {
        double theta = angle(x, length);
        double sine = StrictMath.sin(theta);
        double square = theta - StrictMath.sin(2 * theta) / 2 + c * sine * sine * sine;
        return baseRadius * Math.sqrt(Math.max(0, square) / Math.PI);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        double theta = angle(x, length);
        double sine = StrictMath.sin(theta);
        double base = sine - theta * StrictMath.cos(theta) - sine * sine * sine / 3;
        double bulge = 3 * theta / 8 - StrictMath.sin(2 * theta) / 4 + StrictMath.sin(4 * theta) / 32;
        return baseRadius * baseRadius * length / 2 * (base + c * bulge);
    }

    @Override
    public Optional<String> findFlaw(double baseRadius, double length) {
        return c >= 0 && c <= LARGEST_C
                ? Optional.empty()
                : Optional.of("the parameter C of a Haack series lies between 0 and 2/3, not at " + c);
    }

    private static double angle(double x, double length) {
        return StrictMath.acos(Math.max(-1, Math.min(1, 1 - 2 * x / length)));
    }
}
