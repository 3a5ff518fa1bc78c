package org.sunder.engine.physics.cavity;

import java.util.Optional;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.quantity.Length;

/**
 * A secant ogive: a circular arc of free radius ρ through tip and base edge. With a = acos(√(L² + R²)/(2ρ)) − atan(R/L) its
 * centre is xc = ρ·cos a, h = ρ·sin a. A radius under the tangent ogive's makes it bulge past its base.
 *
 * @param radius arc radius ρ, at least (L² + R²)/(2L)
 */
public record SecantOgive(Length radius) implements NoseProfile {

    @Override
    public double radius(double x, double baseRadius, double length) {
        return arc(baseRadius, length).radiusAt(x);
    }

    @Override
    public double volumeTo(double x, double baseRadius, double length) {
        return arc(baseRadius, length).volumeTo(x);
    }

    @Override
    public double widestStation(double baseRadius, double length) {
        return Math.min(length, arc(baseRadius, length).centre());
    }

    @Override
    public Optional<String> findFlaw(double baseRadius, double length) {
        double rho = radius.metres();
        double least = (length * length + baseRadius * baseRadius) / (2 * length);
        return rho >= least && rho <= SetupBounds.OGIVE_RADIUS.max()
                ? Optional.empty()
                : Optional.of("the arc radius of this secant ogive lies between "
                        + SetupBounds.brief(least) + " m and " + SetupBounds.brief(SetupBounds.OGIVE_RADIUS.max())
                        + " m");
    }

    private CircularArc arc(double baseRadius, double length) {
        double rho = radius.metres();
        double chord = Math.sqrt(length * length + baseRadius * baseRadius);
        double a = StrictMath.acos(Math.min(1, chord / (2 * rho))) - StrictMath.atan2(baseRadius, length);
        return new CircularArc(rho, rho * StrictMath.cos(a), Math.max(0, rho * StrictMath.sin(a)));
    }
}
