package org.sunder.engine.physics.cavity;

import java.util.Optional;

/**
 * The profile of a nose: radius y against distance x from the tip, for base radius R and full length L (all metres).
 *
 * <p>Every profile has its integral π·∫y²dx in closed form, so volumes need no quadrature. Profiles after G. A. Crowell
 * Sr., The Descriptive Geometry of Nose Cones (1996); cone, ellipsoid and paraboloid after any handbook. A cavity uses the
 * inside radius and inside length.
 */
public sealed interface NoseProfile
        permits Cone, TangentOgive, SecantOgive, Ellipsoid, Paraboloid, PowerSeries, HaackSeries, ParabolicSeries {

    /** Radius in metres at x metres from the tip, 0 ≤ x ≤ L. */
    double radius(double x, double baseRadius, double length);

    /** Volume in cubic metres between the tip and x metres from it, 0 ≤ x ≤ L. */
    double volumeTo(double x, double baseRadius, double length);

    /** Distance in metres from the tip of the widest station; the radius only grows before it and only falls after it. */
    default double widestStation(double baseRadius, double length) {
        return length;
    }

    /** Why this profile cannot be drawn on that base radius and length, or empty. */
    default Optional<String> findFlaw(double baseRadius, double length) {
        return Optional.empty();
    }
}
