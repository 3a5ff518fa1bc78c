package org.sunder.engine.physics.cavity;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * An arc through the tip whose centre lies at distance {@code centre} behind the tip and {@code below} beneath the axis:
 * y = √(ρ² − (xc − x)²) − h with ρ² = xc² + h², the common form of both ogives.
 *
 * <p>Volume π[(ρ² + h²)x − (xc³ − (xc − x)³)/3 − 2h(I(xc) − I(xc − x))], I(u) = (u√(ρ² − u²) + ρ²·asin(u/ρ))/2.
 *
 * @param radius ρ in metres
 * @param centre xc in metres
 * @param below h in metres, not negative
 */
record CircularArc(double radius, double centre, double below) {

    /** Beyond this ratio of ρ to the drawn length the closed form loses digits by cancellation. */
    private static final double FLATTEST_CLOSED_FORM = 100;

    private static final GaussIntegrator QUADRATURE = new GaussIntegratorFactory().legendre(24);

    /** Radius y in metres at x metres from the tip, in the form that does not cancel: x(2xc − x)/(√(ρ² − (xc − x)²) + h). */
    double radiusAt(double x) {
        double u = centre - x;
        double half = Math.sqrt(Math.max(0, radius * radius - u * u)) + below;
        return half == 0 ? 0 : x * (2 * centre - x) / half;
    }

    /** Volume in cubic metres from the tip to x. */
    double volumeTo(double x) {
        if (x <= 0) {
            return 0;
        }
        return radius > FLATTEST_CLOSED_FORM * x ? quadrature(x) : closedForm(x);
    }

    private double closedForm(double x) {
        double u = centre - x;
        double squares = (radius * radius + below * below) * x;
        double cubes = x * (centre * centre + centre * u + u * u) / 3;
        return Math.PI * (squares - cubes - 2 * below * (segment(centre) - segment(u)));
    }

    private double quadrature(double x) {
        double half = x / 2;
        return Math.PI
                * half
                * QUADRATURE.integrate(t -> {
                    double y = radiusAt(half * (1 + t));
                    return y * y;
                });
    }

    private double segment(double u) {
        double sine = Math.max(-1, Math.min(1, u / radius));
        double chord = Math.sqrt(Math.max(0, radius * radius - u * u));
        return (u * chord + radius * radius * StrictMath.asin(sine)) / 2;
    }
}
