package org.sunder.engine.physics.cavity;

import java.util.Optional;

/**
 * The parabolic series: y = R·(2s − K·s²)/(2 − K) with s = x/L, volume πR²L·(4/3 − K + K²/5)/(2 − K)².
 *
 * @param k the parameter K, from 0 (cone) to 1 (full parabola)
 */
public record ParabolicSeries(double k) implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        double s = x / length;
        return baseRadius * s * (2 - k * s) / (2 - k);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        double s = x / length;
        double integral = s * s * s * (4.0 / 3 - k * s + k * k * s * s / 5);
        return Math.PI * baseRadius * baseRadius * length * integral / ((2 - k) * (2 - k));
    }

    @Override
    public Optional<String> findFlaw(double baseRadius, double length) {
        return k >= 0 && k <= 1
                ? Optional.empty()
                : Optional.of("the parameter K of a parabolic series lies between 0 and 1, not at " + k);
    }
}
