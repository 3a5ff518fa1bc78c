package org.sunder.picture;

/** Points joined by straight lines, in one piece or several. */
public final class Trace {

    private final StringBuilder points = new StringBuilder();

    /** Adds a point. */
    public Trace to(double x, double y) {
        return add(points.isEmpty() ? "M" : "L", x, y);
    }

    /** Begins another piece at a point. */
    public Trace from(double x, double y) {
        return add("M", x, y);
    }

    /** Goes on straight down. */
    Trace down(double length) {
        points.append('v');
        Tenths.add(points, length);
        return this;
    }

    /** Whether no point was added yet. */
    public boolean isEmpty() {
        return points.isEmpty();
    }

    private Trace add(String how, double x, double y) {
        points.append(how);
        Tenths.add(Tenths.add(points, x).append(' '), y);
        return this;
    }

    /** As SVG writes it. */
    @Override
    public String toString() {
        return points.toString();
    }
}
