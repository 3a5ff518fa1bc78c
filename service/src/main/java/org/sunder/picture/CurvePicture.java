package org.sunder.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/**
 * The chance of separating against the charge, on the charge ruler's strip: the curve in what is believed of it, where the joint
 * is likely to part, every firing above its charge, the handbook charge and the wall at the ceiling.
 */
public final class CurvePicture {

    private static final double TEXT = 13;
    private static final double LEFT = 54; // room for the chances
    private static final double EDGE = 20; // room for the wall
    private static final double WALL = 14;
    private static final double PLOT = 190;
    private static final double TOP = 10;
    private static final double STRIP = 28;
    private static final double MARK = 32;
    private static final int MOST_LANES = 5;
    private static final double ROW = TEXT + 5;
    private static final double BESIDE = 12; // between labels on one line
    private static final double LEAST_TICK = 4.5; // px between ticks
    private static final double PER_NUMBER = 64; // px
    private static final MathContext ROUNDING = new MathContext(12);

    private final ChargeRuler ruler;
    private final List<Point> points;
    private final double width;
    private final Axis charge;
    private final Axis chance = new Axis(0, 1, TOP + PLOT, TOP);
    private final Marks marks;
    private final double stripTop;
    private final double stripBottom;

    /**
     * A point of the curve.
     *
     * @param charge in the unit of the measure
     * @param separated chance of separating
     * @param low what the joint's own chance is hardly below
     * @param high what it is hardly above
     */
    public record Point(double charge, double separated, double low, double high) {}

    private CurvePicture(ChargeRuler ruler, List<Point> points, double width) {
        this.ruler = ruler;
        this.points = points;
        this.width = width;
        this.charge =
                new Axis(points.get(0).charge(), points.get(points.size() - 1).charge(), LEFT, width - EDGE);
        this.marks =
                new Marks(ruler, MARK, TEXT, MOST_LANES, width, firing -> charge.within(ruler.inUnit(firing.charge())));
        this.stripTop = TOP + PLOT + (ruler.firings().isEmpty() ? 0 : 6 + marks.height());
        this.stripBottom = stripTop + STRIP;
    }

    /**
     * The picture.
     *
     * @param ruler of the joint
     * @param points of its curve, the smallest charge first; two at least
     * @param width in px
     */
    public static String of(ChargeRuler ruler, List<Point> points, double width) {
        return new CurvePicture(ruler, List.copyOf(points), width).draw();
    }

    private String draw() {
        Lanes below = new Lanes(BESIDE);
        Label ceiling = ceiling(below);
        Label handbook = handbook(below);
        Label unit = unit(below);
        double height = stripBottom + 9 + below.count() * ROW + 3;
        Svg svg = Svg.sized(
                width, height, "curve", "Chance of separating against charge, " + ruler.subject(), words(), false);
        likely(svg);
        chances(svg);
        curve(svg);
        strip(svg);
        marks.draw(svg, stripTop);
        wall(svg);
        double tick = charge.within(ruler.inUnit(ruler.handbook()));
        svg.stroke("handbook", Paint.DOTS, tick, stripBottom - 5, tick, stripBottom + 8);
        write(svg, "ceiling", ceiling);
        write(svg, "handbook", handbook);
        write(svg, "unit", unit);
        return svg.end();
    }

    private void likely(Svg svg) {
        ChargeRuler.Band band = ruler.likely();
        if (band == null || ruler.inUnit(band.low()) >= charge.high()) {
            return;
        }
        double from = charge.within(ruler.inUnit(band.low()));
        double to = charge.within(ruler.inUnit(band.high()));
        double middle = charge.within(ruler.inUnit(band.middle()));
        svg.box("band", Paint.LIGHT, from, TOP, to - from, stripBottom - TOP, 0);
        svg.stroke("bracket", Paint.LINE, from, TOP, from, stripTop)
                .stroke("bracket", Paint.LINE, to, TOP, to, stripTop);
        svg.stroke("middle", Paint.DASHES, middle, TOP, middle, stripTop);
    }

    private void chances(Svg svg) {
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = chance.at(percent / 100.0);
            svg.stroke("grid", Paint.LINE, charge.start(), y, charge.end(), y);
            svg.words("number", false, LEFT - 8, y + TEXT * 0.36, TEXT, Weight.REGULAR, Anchor.END, percent + " %");
        }
    }

    private void curve(Svg svg) {
        Trace believed = new Trace();
        Trace line = new Trace();
        for (Point point : points) {
            believed.to(charge.at(point.charge()), chance.at(point.high()));
            line.to(charge.at(point.charge()), chance.at(point.separated()));
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            believed.to(
                    charge.at(points.get(i).charge()), chance.at(points.get(i).low()));
        }
        svg.shape("believed", Paint.LIGHT, believed + "Z").shape("line", Paint.STRONG, line.toString());
    }

    private void strip(Svg svg) {
        svg.box("strip", Paint.LINE, charge.start(), stripTop, charge.end() - charge.start(), STRIP, 0);
        svg.stroke("lip", Paint.STRONG, charge.start() - 1, stripTop, charge.end(), stripTop);
        Trace marked = new Trace();
        BigDecimal step = ruler.measure().value();
        double perStep = charge.at(charge.low() + step.doubleValue()) - charge.start();
        if (perStep >= LEAST_TICK) {
            BigDecimal first = BigDecimal.valueOf(Math.ceil(charge.low() / step.doubleValue() - 1e-9));
            for (BigDecimal at = first.multiply(step); at.doubleValue() <= charge.high(); at = at.add(step)) {
                double x = charge.at(at.doubleValue());
                marked.from(x, stripTop).to(x, stripTop + 5);
            }
        }
        for (BigDecimal tick : charge.ticks(Math.max(2, (int) ((charge.end() - charge.start()) / PER_NUMBER)))) {
            double x = charge.at(tick.doubleValue());
            double half = Lettering.width(tick.toPlainString(), TEXT, Weight.REGULAR) / 2;
            marked.from(x, stripTop).to(x, stripTop + 9);
            if (x - half > charge.start() && x + half < (walled() ? Math.min(wall(), charge.end()) : charge.end())) {
                svg.words(
                        "number", false, x, stripBottom - 5, TEXT, Weight.REGULAR, Anchor.MIDDLE, tick.toPlainString());
            }
        }
        svg.shape("tick", Paint.LINE, marked.toString());
    }

    /** Whether the ceiling lies where charges are shown. */
    private boolean walled() {
        double ceiling = ruler.inUnit(ruler.ceiling());
        return ceiling >= charge.low() && ceiling <= charge.high();
    }

    private double wall() {
        return charge.within(ruler.inUnit(ruler.ceiling()));
    }

    private void wall(Svg svg) {
        if (!walled()) {
            return;
        }
        double top = stripTop - 16;
        double across = WALL - 2;
        svg.stroke("limit", Paint.DASHES, wall(), TOP, wall(), top);
        svg.box("wall", Paint.OUTLINE, wall() + 1, top, across, stripBottom - top, 0);
        StringBuilder hatch = new StringBuilder();
        for (double y = top + across; y <= stripBottom; y += 7) {
            hatch.append(String.format(Locale.ROOT, "M%.1f %.1fl%.1f %.1f", wall() + 1, y, across, -across));
        }
        svg.shape("hatch", Paint.LINE, hatch.toString());
    }

    /** Words below the strip, from a coordinate on. */
    private record Label(String words, Weight weight, double left, double wide, int row) {}

    private Label ceiling(Lanes below) {
        boolean farAbove = ruler.inUnit(ruler.ceiling()) > charge.high();
        String words = "never above " + Display.words(Display.never(ruler.ceiling(), ruler.measure()))
                + (farAbove ? " →" : "");
        double wide = Lettering.width(words, TEXT, Weight.BOLD);
        double end = ruler.inUnit(ruler.ceiling()) < charge.low() ? charge.start() + wide : wall() + WALL;
        return label(below, words, Weight.BOLD, end - wide, wide);
    }

    private Label handbook(Lanes below) {
        String words = "handbook " + Display.words(Display.near(ruler.handbook(), ruler.measure()));
        double wide = Lettering.width(words, TEXT, Weight.REGULAR);
        return label(below, words, Weight.REGULAR, charge.within(ruler.inUnit(ruler.handbook())) - wide / 2, wide);
    }

    private Label unit(Lanes below) {
        String words = "charge, " + ruler.measure().unit();
        return label(below, words, Weight.REGULAR, 0, Lettering.width(words, TEXT, Weight.REGULAR));
    }

    /** Kept inside the picture, in the first row where it touches nothing. */
    private Label label(Lanes below, String words, Weight weight, double left, double wide) {
        double kept = Math.max(1, Math.min(left, width - wide - 1));
        return new Label(words, weight, kept, wide, below.take(kept, kept + wide));
    }

    private void write(Svg svg, String css, Label label) {
        double y = stripBottom + 8 + (label.row() + 1) * ROW - 5;
        svg.words(css, false, label.left() + label.wide() / 2, y, TEXT, label.weight(), Anchor.MIDDLE, label.words());
    }

    private String words() {
        StringBuilder words = new StringBuilder();
        for (double asked : List.of(0.1, 0.5, 0.9)) {
            points.stream()
                    .filter(point -> point.separated() >= asked)
                    .findFirst()
                    .ifPresent(point -> words.append(String.format(
                            Locale.ROOT,
                            "At %s the chance is %.0f %%, between %.0f and %.0f %%. ",
                            near(point.charge()),
                            100 * point.separated(),
                            100 * point.low(),
                            100 * point.high())));
        }
        long separated = ruler.firings().stream()
                .filter(firing -> firing.mark().outcome() == Outcome.SEPARATED)
                .count();
        return words + "Fired: " + ruler.firings().size() + ", of these separated: " + separated + ".";
    }

    private String near(double inUnit) {
        Mass exact = new Mass(new BigDecimal(inUnit, ROUNDING), ruler.measure().unit());
        return Display.words(Display.near(exact, ruler.measure()));
    }
}
