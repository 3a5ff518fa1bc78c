package org.sunder.engine.physics.cavity;

/** A paraboloid, the power series with n = ½: y = R·√(x/L), volume πR²L/2. */
public record Paraboloid() implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        return baseRadius * Math.sqrt(x / length);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        return Math.PI * baseRadius * baseRadius * x * x / (2 * length);
    }
}
