package org.sunder.engine.physics.cavity;

/** A cone: y = R·x/L, volume πR²L/3. */
public record Cone() implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        return baseRadius * x / length;
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        double r = radius(x, baseRadius, length);
        return Math.PI * r * r * x / 3;
    }
}
