package org.sunder.picture;

import java.util.Locale;

/** Points joined by straight lines. */
public final class Trace {

    private final StringBuilder points = new StringBuilder();

    /** Adds a point. */
    public Trace to(double x, double y) {
        points.append(points.isEmpty() ? "M" : "L").append(String.format(Locale.ROOT, "%.1f %.1f", x, y));
        return this;
    }

    /** As SVG writes it. */
    @Override
    public String toString() {
        return points.toString();
    }
}
