package org.sunder.engine.physics.cavity;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.Solids;
import org.sunder.engine.quantity.Length;

/**
 * One piece of the closed space behind a joint. Stations inside it are measured in metres from its end nearest the joint
 * (its base), 0 to {@link #span()}.
 */
public sealed interface CavitySegment {

    /** Usable length in metres. */
    double span();

    /** Radius in metres of the open end nearest the joint. */
    default double baseRadius() {
        return radiusAt(0);
    }

    /** Inner radius in metres at a station. */
    double radiusAt(double station);

    /** Volume in cubic metres between two stations. */
    double volumeBetween(double from, double to);

    /** The part of that volume within a radius in metres of the axis. */
    double volumeWithin(double from, double to, double radius);

    /**
     * A straight tube.
     *
     * @param innerDiameter inner diameter
     * @param length inner length
     */
    record Cylinder(Length innerDiameter, Length length) implements CavitySegment {

        @Override
        public double span() {
            return length.metres();
        }

        @Override
        public double radiusAt(double station) {
            return innerDiameter.metres() / 2;
        }

        @Override
        public double volumeBetween(double from, double to) {
            return volumeWithin(from, to, Double.POSITIVE_INFINITY);
        }

        @Override
        public double volumeWithin(double from, double to, double radius) {
            return Solids.cylinder(Math.min(radius, radiusAt(from)), to - from);
        }
    }

    /**
     * The inside of a nose, tip at the far end.
     *
     * @param profile its profile
     * @param baseDiameter inner diameter at the base
     * @param length full inner length of the profile, tip to base
     * @param tipCutoff length at the tip that is not cavity (metal tip, bulkhead), or null for none
     */
    record NoseCavity(
            NoseProfile profile,
            Length baseDiameter,
            Length length,
            @Nullable Length tipCutoff) implements CavitySegment {

        private static final int MOST_EVALUATIONS = 200;

        @Override
        public double span() {
            return length.metres() - (tipCutoff == null ? 0 : tipCutoff.metres());
        }

        @Override
        public double radiusAt(double station) {
            return profile.radius(fromTip(station), base(), length.metres());
        }

        @Override
        public double volumeBetween(double from, double to) {
            return profile.volumeTo(fromTip(from), base(), length.metres())
                    - profile.volumeTo(fromTip(to), base(), length.metres());
        }

        @Override
        public double volumeWithin(double from, double to, double radius) {
            double widest = Math.min(to, Math.max(from, length.metres() - widestFromTip()));
            return monotoneWithin(from, widest, radius) + monotoneWithin(widest, to, radius);
        }

        private double monotoneWithin(double from, double to, double radius) {
            double low = Math.min(radiusAt(from), radiusAt(to));
            double high = Math.max(radiusAt(from), radiusAt(to));
            if (to <= from || radius >= high) {
                return to <= from ? 0 : volumeBetween(from, to);
            }
            if (radius <= low) {
                return Solids.cylinder(radius, to - from);
            }
            double crossing = new BracketingNthOrderBrentSolver(1e-15, 1e-12, 5)
                    .solve(MOST_EVALUATIONS, x -> radiusAt(x) - radius, from, to);
            boolean narrowing = radiusAt(to) < radius;
            return narrowing
                    ? Solids.cylinder(radius, crossing - from) + volumeBetween(crossing, to)
                    : volumeBetween(from, crossing) + Solids.cylinder(radius, to - crossing);
        }

        private double widestFromTip() {
            return profile.widestStation(base(), length.metres());
        }

        private double base() {
            return baseDiameter.metres() / 2;
        }

        private double fromTip(double station) {
            return Math.max(0, length.metres() - station);
        }
    }
}
