package org.sunder.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.picture.Axis;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PullTest;

/** The pulls of a batch on a scale of force, and what they say one pin holds. */
final class PullPicture {

    private static final double EDGE = 14;
    private static final double ROW = 17;
    private static final double DOT = 12;
    private static final double TEXT = 13;
    private static final double LABEL = 46; // px between labels of the scale
    private static final double ROOM = 0.15; // of the pulls' extent, at both ends

    private final PinBatch batch;
    private final double width;
    private final ForceUnit unit;
    private final Axis axis;

    private PullPicture(PinBatch batch, double width) {
        this.batch = batch;
        this.width = width;
        this.unit = batch.pulls().get(0).force().unit();
        List<Double> forces =
                batch.pulls().stream().map(pull -> in(pull.force())).toList();
        double low = forces.stream().mapToDouble(each -> each).min().orElseThrow();
        double high = forces.stream().mapToDouble(each -> each).max().orElseThrow();
        double room = Math.max(ROOM * (high - low), 0.05 * high);
        this.axis = new Axis(Math.max(0, low - room), high + room, EDGE, width - EDGE);
    }

    /** The picture, drawn for some widths; none before the second pull. */
    static Map<Integer, String> of(PinBatch batch) {
        return batch.pulls().size() < PinBatch.FEWEST
                ? Map.of()
                : Drawn.inAColumn(width -> new PullPicture(batch, width).draw());
    }

    private double in(Force force) {
        return force.valueIn(unit).doubleValue();
    }

    private String draw() {
        int[] rows = rows();
        int most = 0;
        for (int row : rows) {
            most = Math.max(most, row);
        }
        double base = 24 + (most + 1) * ROW;
        Svg svg = Svg.sized(width, base + 42, "curve pulls", "Forces at which pins broke", words(), false);
        batch.strength().ifPresent(found -> {
            double mean = in(found.mean());
            double deviation = in(found.standardDeviation());
            double from = axis.within(mean - deviation);
            svg.box("band", Paint.LIGHT, from, 18, axis.within(mean + deviation) - from, base - 18, 0);
            svg.stroke("middle", Paint.DASHES, axis.at(mean), 18, axis.at(mean), base);
            svg.words(
                    "number",
                    false,
                    Math.max(EDGE + 20, Math.min(width - EDGE - 20, axis.at(mean))),
                    13,
                    TEXT,
                    Weight.BOLD,
                    Anchor.MIDDLE,
                    Words.digits(mean));
        });
        svg.stroke("lip", Paint.STRONG, axis.start(), base, axis.end(), base);
        for (BigDecimal tick : axis.ticks((int) ((axis.end() - axis.start()) / LABEL))) {
            double x = axis.at(tick.doubleValue());
            svg.stroke("tick", Paint.LINE, x, base, x, base + 6);
            svg.words("number", false, x, base + 20, TEXT, Weight.REGULAR, Anchor.MIDDLE, tick.toPlainString());
        }
        for (int i = 0; i < rows.length; i++) {
            PullTest pull = batch.pulls().get(i);
            double x = axis.at(in(pull.force()));
            double y = base - 4 - rows[i] * ROW - DOT;
            svg.box(
                    pull.leftOut() ? "block open" : "block",
                    pull.leftOut() ? Paint.STRUCK : Paint.INK,
                    x - DOT / 2,
                    y,
                    DOT,
                    DOT,
                    DOT / 2);
        }
        svg.words("unit", false, axis.end(), base + 38, TEXT, Weight.REGULAR, Anchor.END, unit.toString());
        return svg.end();
    }

    /** In which row each pull stands, so that none lies on another. */
    private int[] rows() {
        int[] rows = new int[batch.pulls().size()];
        for (int i = 0; i < rows.length; i++) {
            double x = axis.at(in(batch.pulls().get(i).force()));
            boolean moved = true;
            while (moved) {
                moved = false;
                for (int j = 0; j < i; j++) {
                    if (rows[j] == rows[i]
                            && Math.abs(axis.at(in(batch.pulls().get(j).force())) - x) < DOT + 2) {
                        rows[i]++;
                        moved = true;
                    }
                }
            }
        }
        return rows;
    }

    private String words() {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < batch.pulls().size(); i++) {
            PullTest pull = batch.pulls().get(i);
            words.append("Pull ").append(i + 1).append(": ").append(Words.of(pull.force()));
            words.append(pull.leftOut() ? ", left out. " : ". ");
        }
        batch.strength()
                .ifPresent(found -> words.append("Mean ")
                        .append(Words.digits(in(found.mean())))
                        .append(", tinted one standard deviation to either side."));
        return words.toString().strip();
    }
}
