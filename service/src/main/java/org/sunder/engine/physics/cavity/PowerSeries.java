package org.sunder.engine.physics.cavity;

import java.util.Optional;

/**
 * The power series: y = R·(x/L)ⁿ, volume πR²L/(2n + 1).
 *
 * @param n exponent, above 0 and at most 1 (1 is a cone)
 */
public record PowerSeries(double n) implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        return baseRadius * StrictMath.pow(x / length, n);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        double order = 2 * n + 1;
        return Math.PI * baseRadius * baseRadius * length * StrictMath.pow(x / length, order) / order;
    }

    @Override
    public Optional<String> findFlaw(double baseRadius, double length) {
        return n > 0 && n <= 1
                ? Optional.empty()
                : Optional.of("the exponent n of a power series lies above 0 and at most at 1, not at " + n);
    }
}
