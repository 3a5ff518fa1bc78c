package org.sunder.engine.physics.cavity;

import java.util.List;

/**
 * The closed space behind a joint: segments from the closed far end to the joint plane. Stations are depths in metres from
 * the joint plane, 0 to {@link #depth()}; a bay or coupler pushed in takes the stations nearest the joint.
 *
 * @param segments far end first, joint last
 */
public record Cavity(List<CavitySegment> segments) {

    /** Copies the list. */
    public Cavity {
        segments = List.copyOf(segments);
    }

    /** Usable depth in metres from the joint plane to the closed end. */
    public double depth() {
        return segments.stream().mapToDouble(CavitySegment::span).sum();
    }

    /** Volume in cubic metres. */
    public double volume() {
        return volumeBetween(0, depth());
    }

    /** Inner radius in metres of the open end at the joint. */
    public double openingRadius() {
        return segments.get(segments.size() - 1).baseRadius();
    }

    /** Inner radius in metres at a depth; where two segments meet, that of the one nearer the joint. */
    public double radiusAt(double station) {
        double start = 0;
        for (int i = segments.size() - 1; i > 0; i--) {
            double span = segments.get(i).span();
            if (station <= start + span) {
                return segments.get(i).radiusAt(station - start);
            }
            start += span;
        }
        return segments.get(0)
                .radiusAt(Math.min(station - start, segments.get(0).span()));
    }

    /**
     * Least inner radius in metres between two depths. Radii only fall away from a segment's widest station, so it lies at an
     * end of a piece of a segment.
     */
    public double narrowest(double from, double to) {
        double least = Math.min(radiusAt(from), radiusAt(to));
        double start = 0;
        for (int i = segments.size() - 1; i >= 0; i--) {
            CavitySegment segment = segments.get(i);
            double a = Math.max(from - start, 0);
            double b = Math.min(to - start, segment.span());
            if (b > a) {
                least = Math.min(least, Math.min(segment.radiusAt(a), segment.radiusAt(b)));
            }
            start += segment.span();
        }
        return least;
    }

    /** Volume in cubic metres between two depths. */
    public double volumeBetween(double from, double to) {
        return sum(from, to, CavitySegment::volumeBetween);
    }

    /** The part of the volume between two depths that lies within a radius in metres of the axis. */
    public double volumeWithin(double from, double to, double radius) {
        return sum(from, to, (segment, a, b) -> segment.volumeWithin(a, b, radius));
    }

    private double sum(double from, double to, Measure measure) {
        double start = 0;
        double volume = 0;
        for (int i = segments.size() - 1; i >= 0; i--) {
            double span = segments.get(i).span();
            double a = Math.max(from - start, 0);
            double b = Math.min(to - start, span);
            volume += b > a ? measure.of(segments.get(i), a, b) : 0;
            start += span;
        }
        return volume;
    }

    private interface Measure {
        double of(CavitySegment segment, double from, double to);
    }
}
