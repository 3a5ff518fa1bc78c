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
import org.sunder.picture.Svg.Line;
import org.sunder.picture.Trace;

/** A value of two compartments against the depth of the bay between them; a line ends where the bay cannot be. */
final class DepthPicture {

    private static final double WIDTH = 440;
    private static final double LEFT = 60;
    private static final double RIGHT = WIDTH - 16;
    private static final double TOP = 40;
    private static final double BOTTOM = 230;
    private static final double SIZE = 15;
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
    private final Display display;
    private final boolean metric;
    private final Axis depth;
    private final Axis value;

    /**
     * Of at least one point with a value.
     *
     * @param unit of the values
     * @param now how deep the bay is, m
     */
    DepthPicture(String title, String unit, List<Point> points, double now, Display display) {
        this.title = title;
        this.unit = unit;
        this.points = List.copyOf(points);
        this.now = now;
        this.display = display;
        this.metric = display.units() == UnitSystem.METRIC;
        this.depth = new Axis(
                shown(points.get(0).depth()),
                shown(points.get(points.size() - 1).depth()),
                LEFT,
                RIGHT);
        this.value = new Axis(0, 1.05 * greatest(), BOTTOM, TOP);
    }

    String draw() {
        Svg svg = new Svg(WIDTH, BOTTOM + 52, title, words());
        svg.text(LEFT, TOP - 22, SIZE, Anchor.START, unit);
        for (BigDecimal tick : value.ticks(5)) {
            double y = value.at(tick.doubleValue());
            svg.line(LEFT, y, RIGHT, y, Line.FAINT).text(LEFT - 8, y + 5, SIZE, Anchor.END, tick.toPlainString());
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, Line.THIN);
        for (BigDecimal tick : depth.ticks(5)) {
            double x = depth.at(tick.doubleValue());
            svg.line(x, BOTTOM, x, BOTTOM + 5, Line.THIN)
                    .text(x, BOTTOM + 20, SIZE, Anchor.MIDDLE, tick.toPlainString());
        }
        svg.text((LEFT + RIGHT) / 2, BOTTOM + 42, SIZE, Anchor.MIDDLE, "pushed in, " + (metric ? "mm" : "in"));
        if (shown(now) >= depth.low() && shown(now) <= depth.high()) {
            double x = depth.at(shown(now));
            svg.line(x, TOP, x, BOTTOM, Line.DOTTED)
                    .text(Math.min(RIGHT - 20, Math.max(LEFT + 20, x)), TOP - 6, SIZE, Anchor.MIDDLE, "now");
        }
        line(svg, Point::there, Line.DASHED);
        line(svg, Point::here, Line.BOLD);
        return svg.end();
    }

    /** Where the value of a compartment is known, piece by piece. */
    private void line(Svg svg, Function<Point, @Nullable Double> of, Line style) {
        Trace piece = new Trace();
        int length = 0;
        for (Point point : points) {
            Double known = of.apply(point);
            if (known == null) {
                if (length > 1) {
                    svg.path(piece, style);
                }
                piece = new Trace();
                length = 0;
            } else {
                piece.to(depth.at(shown(point.depth())), value.at(known));
                length++;
            }
        }
        if (length > 1) {
            svg.path(piece, style);
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
