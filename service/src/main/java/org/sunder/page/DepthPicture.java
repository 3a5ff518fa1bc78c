package org.sunder.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.picture.Axis;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;
import org.sunder.picture.Trace;

/** A value of two compartments against the depth of the bay between them; a line ends where the bay cannot be. */
final class DepthPicture {

    private static final double LEFT = 60;
    private static final double EDGE = 18;
    private static final double TOP = 34;
    private static final double BOTTOM = 220;
    private static final double TEXT = 13;
    private static final double ROOM = 52; // px that a depth in words takes
    private static final double PER_NUMBER = 60; // px
    private static final double MILLIMETRES = 1000;
    private static final double INCHES = 1 / 0.0254;

    /**
     * A depth.
     *
     * @param depth m
     * @param here value of the compartment that the depth is measured in, or null where the bay cannot be there
     * @param there value of the other one, or null
     */
    record Point(
            double depth, @Nullable Double here, @Nullable Double there) {}

    private final String title;
    private final String unit;
    private final List<Point> points;
    private final double now;
    private final double chosen;
    private final double width;
    private final Display display;
    private final boolean metric;
    private final Axis depth;
    private final Axis value;

    /**
     * Of at least one point with a value.
     *
     * @param unit of the values
     * @param now how deep the bay is, m
     * @param chosen the depth looked at closely, m
     * @param width in px
     */
    DepthPicture(
            String title, String unit, List<Point> points, double now, double chosen, Display display, double width) {
        this.title = title;
        this.unit = unit;
        this.points = List.copyOf(points);
        this.now = now;
        this.chosen = chosen;
        this.width = width;
        this.display = display;
        this.metric = display.units() == UnitSystem.METRIC;
        this.depth = new Axis(
                shown(points.get(0).depth()),
                shown(points.get(points.size() - 1).depth()),
                LEFT,
                width - EDGE);
        this.value = new Axis(0, 1.05 * greatest(), BOTTOM, TOP);
    }

    String draw() {
        Svg svg = Svg.sized(width, BOTTOM + 46, "depths", title, words(), false);
        text(svg, "number", LEFT - 8, TOP - 14, Anchor.END, unit);
        for (BigDecimal tick : value.ticks(5)) {
            double y = value.at(tick.doubleValue());
            svg.stroke("grid", Paint.LINE, LEFT, y, depth.end(), y);
            text(svg, "number", LEFT - 8, y + TEXT * 0.36, Anchor.END, tick.toPlainString());
        }
        svg.stroke("axis", Paint.LINE, LEFT, BOTTOM, depth.end(), BOTTOM);
        for (BigDecimal tick : depth.ticks(Math.max(2, (int) ((depth.end() - LEFT) / PER_NUMBER)))) {
            double x = depth.at(tick.doubleValue());
            svg.stroke("axis", Paint.LINE, x, BOTTOM, x, BOTTOM + 5);
            text(svg, "number", x, BOTTOM + 20, Anchor.MIDDLE, tick.toPlainString());
        }
        text(svg, "caption", depth.end(), BOTTOM + 40, Anchor.END, "pushed in, " + (metric ? "mm" : "in"));
        upright(svg, "now", Paint.DOTS, now);
        if (Math.abs(chosen - now) > 1e-6) {
            upright(svg, "chosen", Paint.STRONG, chosen);
        }
        line(svg, Point::there, "there", Paint.DASHES);
        line(svg, Point::here, "here", Paint.STRONG);
        return svg.end();
    }

    /** A depth that is told of, with what it is above it where that has room. */
    private void upright(Svg svg, String css, Paint paint, double metres) {
        if (shown(metres) < depth.low() - 1e-9 || shown(metres) > depth.high() + 1e-9) {
            return;
        }
        double x = depth.at(shown(metres));
        svg.stroke(css, paint, x, TOP, x, BOTTOM);
        boolean free = css.equals("now") || Math.abs(x - depth.at(shown(now))) > ROOM;
        if (free) {
            String words = css.equals("now") ? "now" : display.depth(metres);
            text(
                    svg,
                    "number",
                    Math.min(depth.end() - ROOM / 3, Math.max(LEFT + ROOM / 3, x)),
                    TOP - 6,
                    Anchor.MIDDLE,
                    words);
        }
    }

    private static void text(Svg svg, String css, double x, double y, Anchor anchor, String words) {
        svg.words(css, false, x, y, TEXT, Weight.REGULAR, anchor, words);
    }

    /** Where the value of a compartment is known, piece by piece. */
    private void line(Svg svg, Function<Point, @Nullable Double> of, String css, Paint paint) {
        Trace piece = new Trace();
        int length = 0;
        for (Point point : points) {
            Double known = of.apply(point);
            if (known == null) {
                if (length > 1) {
                    svg.shape(css, paint, piece.toString());
                }
                piece = new Trace();
                length = 0;
            } else {
                piece.to(depth.at(shown(point.depth())), value.at(known));
                length++;
            }
        }
        if (length > 1) {
            svg.shape(css, paint, piece.toString());
        }
    }

    private String words() {
        return String.join(
                " ",
                Stream.of(points.get(0), points.get(points.size() - 1))
                        .map(point -> "At " + display.depth(point.depth()) + ": " + words(point.here()) + " here"
                                + (point.there() == null ? "" : ", " + words(point.there()) + " on the other side")
                                + ".")
                        .toList());
    }

    private String words(@Nullable Double known) {
        return known == null ? "cannot be" : Words.digits(known) + " " + unit;
    }

    private double greatest() {
        return points.stream()
                .flatMapToDouble(point -> Stream.of(point.here(), point.there())
                        .filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue))
                .max()
                .orElse(1);
    }

    private double shown(double metres) {
        return metres * (metric ? MILLIMETRES : INCHES);
    }
}
