package org.sunder.engine.physics.cavity;

import java.util.Optional;

/** A tangent ogive: a circular arc of radius ρ = (R² + L²)/(2R) that meets the body without a kink; needs L ≥ R. */
public record TangentOgive() implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        return arc(baseRadius, length).radiusAt(x);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        return arc(baseRadius, length).volumeTo(x);
    }

    @Override
    public Optional<String> findFlaw(double baseRadius, double length) {
        return length >= baseRadius
                ? Optional.empty()
                : Optional.of("a tangent ogive is at least as long as its base radius");
    }

    private static CircularArc arc(double baseRadius, double length) {
        double rho = arcRadius(baseRadius, length);
        return new CircularArc(rho, length, rho - baseRadius);
    }

    /** ρ in metres of the tangent ogive on that base radius and length. */
    static double arcRadius(double baseRadius, double length) {
        return (baseRadius * baseRadius + length * length) / (2 * baseRadius);
    }
}
