package org.sunder.engine.physics.cavity;

/** Half an ellipsoid: y = R·√(1 − (1 − x/L)²), volume 2πR²L/3. */
public record Ellipsoid() implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        double s = x / length;
        return baseRadius * Math.sqrt(s * (2 - s));
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        double s = x / length;
        return Math.PI * baseRadius * baseRadius * length * s * s * (1 - s / 3);
    }
}
