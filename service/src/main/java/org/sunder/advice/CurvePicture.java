package org.sunder.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.picture.Axis;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Line;
import org.sunder.picture.Trace;

/** The curve in its band, and under it a lane for each outcome with a mark at every charge that was fired. */
public final class CurvePicture {

    private static final double WIDTH = 440;
    private static final double LEFT = 84;
    private static final double RIGHT = WIDTH - 16;
    private static final double TOP = 40;
    private static final double BOTTOM = 230;
    private static final double LANE = 26;
    private static final double MARK = 34; // room that a mark needs along the charge
    private static final double SIZE = 15;
    private static final List<Outcome> LANES = List.of(Outcome.SEPARATED, Outcome.PARTIAL, Outcome.NONE);

    private final Curve curve;
    private final Axis charge;
    private final Axis chance = new Axis(0, 1, BOTTOM, TOP);

    private CurvePicture(Curve curve) {
        this.curve = curve;
        this.charge = new Axis(
                inUnit(curve.points().get(0).charge()),
                inUnit(curve.points().get(curve.points().size() - 1).charge()),
                LEFT,
                RIGHT);
    }

    /** The picture of a curve. */
    public static String of(Curve curve) {
        return new CurvePicture(curve).draw();
    }

    /** A mark with its place: which row of its lane. */
    private record Placed(Curve.Mark mark, double x, int row) {}

    private String draw() {
        List<List<Placed>> lanes = LANES.stream().map(this::lane).toList();
        int rows = lanes.stream().mapToInt(CurvePicture::rows).sum();
        double axis = BOTTOM + 14 + rows * LANE;
        Svg svg = new Svg(WIDTH, axis + 46, "Chance of separating against charge", words());
        chances(svg);
        limits(svg, axis);
        band(svg);
        double y = BOTTOM + 14;
        for (int i = 0; i < LANES.size(); i++) {
            svg.text(LEFT - 8, y + LANE / 2 + 4, SIZE, Anchor.END, LANES.get(i).toString());
            for (Placed placed : lanes.get(i)) {
                mark(svg, placed, y + (placed.row() + 0.5) * LANE);
            }
            y += rows(lanes.get(i)) * LANE;
        }
        charges(svg, axis);
        return svg.end();
    }

    private static int rows(List<Placed> lane) {
        return 1 + lane.stream().mapToInt(Placed::row).max().orElse(0);
    }

    /** Marks that would cover each other stand in rows of their lane. */
    private List<Placed> lane(Outcome outcome) {
        List<Placed> lane = new ArrayList<>();
        for (Curve.Mark mark : curve.marks()) {
            if (mark.test().report().outcome() == outcome) {
                double x = charge.within(inUnit(mark.charge()));
                int row = 0;
                while (taken(lane, x, row)) {
                    row++;
                }
                lane.add(new Placed(mark, x, row));
            }
        }
        return lane;
    }

    private static boolean taken(List<Placed> lane, double x, int row) {
        return lane.stream().anyMatch(placed -> placed.row() == row && Math.abs(placed.x() - x) < MARK);
    }

    private void mark(Svg svg, Placed placed, double y) {
        var test = placed.mark().test();
        String words = words(Display.loaded(test.report().charge(), curve.measure())) + ", "
                + test.report().outcome() + (test.counted() ? "" : ", void")
                + (test.report().damaged() ? ", damaged" : "");
        svg.mark(placed.x(), y, test.report().outcome(), test.counted(), words);
    }

    private void chances(Svg svg) {
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = chance.at(percent / 100.0);
            svg.line(LEFT, y, RIGHT, y, Line.FAINT).text(LEFT - 8, y + 5, SIZE, Anchor.END, percent + " %");
        }
    }

    private void charges(Svg svg, double axis) {
        svg.line(LEFT, axis, RIGHT, axis, Line.THIN);
        for (BigDecimal tick : charge.ticks(6)) {
            double x = charge.at(tick.doubleValue());
            svg.line(x, axis, x, axis + 5, Line.THIN).text(x, axis + 20, SIZE, Anchor.MIDDLE, tick.toPlainString());
        }
        svg.text(
                (LEFT + RIGHT) / 2,
                axis + 40,
                SIZE,
                Anchor.MIDDLE,
                "charge, " + curve.measure().unit());
    }

    private void limits(Svg svg, double axis) {
        double handbook = charge.at(inUnit(curve.handbookCharge()));
        svg.line(handbook, TOP, handbook, axis, Line.DOTTED)
                .text(label(handbook), TOP - 8, SIZE, Anchor.MIDDLE, "handbook " + mass(curve.handbookCharge()));
        double ceiling = inUnit(curve.ceiling().chargeKg());
        if (ceiling <= charge.high()) {
            double x = charge.within(ceiling);
            svg.line(x, TOP, x, axis, Line.DASHED)
                    .text(
                            label(x),
                            TOP - 24,
                            SIZE,
                            Anchor.MIDDLE,
                            "ceiling " + words(Display.never(curve.ceiling().chargeKg(), curve.measure())));
        }
    }

    private static double label(double x) {
        return Math.min(RIGHT - 60, Math.max(LEFT + 60, x));
    }

    private void band(Svg svg) {
        Trace band = new Trace();
        Trace line = new Trace();
        for (Curve.Point point : curve.points()) {
            double x = charge.at(inUnit(point.charge()));
            band.to(x, chance.at(point.high()));
            line.to(x, chance.at(point.separated()));
        }
        for (int i = curve.points().size() - 1; i >= 0; i--) {
            Curve.Point point = curve.points().get(i);
            band.to(charge.at(inUnit(point.charge())), chance.at(point.low()));
        }
        svg.area(band).path(line, Line.BOLD);
    }

    private String words() {
        StringBuilder words = new StringBuilder();
        for (double asked : List.of(0.1, 0.5, 0.9)) {
            curve.points().stream()
                    .filter(point -> point.separated() >= asked)
                    .findFirst()
                    .ifPresent(point -> words.append(String.format(
                            Locale.ROOT,
                            "At %s the chance is %.0f %%, between %.0f and %.0f %%. ",
                            mass(point.charge()),
                            100 * point.separated(),
                            100 * point.low(),
                            100 * point.high())));
        }
        long separated = curve.marks().stream()
                .filter(mark -> mark.test().report().outcome() == Outcome.SEPARATED)
                .count();
        return words + "Fired: " + curve.marks().size() + ", of these separated: " + separated + ".";
    }

    private String mass(double kilograms) {
        return words(Display.near(kilograms, curve.measure()));
    }

    private static String words(Mass shown) {
        return shown.value().toPlainString() + " " + shown.unit();
    }

    private double inUnit(double kilograms) {
        return Mass.ofKilograms(kilograms).valueIn(curve.measure().unit()).doubleValue();
    }
}
