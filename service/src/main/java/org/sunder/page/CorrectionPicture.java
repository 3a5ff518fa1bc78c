package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.picture.Axis;
import org.sunder.picture.OutcomeMark;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/** Corrections as intervals, one a row: how a joint's narrowed test by test, or how those of a fleet compare. */
final class CorrectionPicture {

    private static final double TOP = 6;
    private static final double ROW = 30;
    private static final double TEXT = 13;
    private static final double LETTER = 7.6; // px that one takes at most on an average
    private static final double FIGURE = 6.4; // px that one of a value takes, brackets and spaces among them
    private static final double MARK = 32;
    private static final double EDGE = 14;
    private static final double VALUES = 440; // px from which on values are written beside their rows
    private static final double APART = 36; // px between numbers of the axis
    private static final double WIDEST = 4;
    private static final double BESIDE = 1.12;

    private final List<Row> rows;
    private final Scale scale;
    private final double width;
    private final double marks;
    private final Axis axis;

    /**
     * What the rows are measured in.
     *
     * @param ticks values named below the picture
     * @param tick one of them in words
     * @param words a value and its interval in words
     * @param caption what the values are
     */
    record Scale(
            List<Double> ticks, DoubleFunction<String> tick, Function<CorrectionFactor, String> words, String caption) {

        /** Corrections, with the handbook in the middle. */
        static final Scale CORRECTION = new Scale(
                List.of(0.25, 0.5, 0.7, 1.0, 1.4, 2.0, 4.0),
                Words::digits,
                Words::of,
                "correction, times the handbook charge");

        /** Parts of a charge. */
        static final Scale SHARE = new Scale(
                List.of(0.02, 0.05, 0.1, 0.2, 0.4, 0.8),
                Words::inPercent,
                share -> Words.inPercent(share.median()) + " (" + Words.inPercent(share.low()) + " – "
                        + Words.inPercent(share.high()) + ")",
                "of the charge");

        /** A value and its interval in words. */
        String of(CorrectionFactor interval) {
            return words.apply(interval);
        }
    }

    /**
     * One interval.
     *
     * @param label what it is of
     * @param mark of the firing that it follows, or null where it follows none
     * @param factor the interval
     */
    record Row(String label, @Nullable OutcomeMark mark, CorrectionFactor factor) {

        /** Whether the firing that it follows is in the fit. */
        boolean counted() {
            return mark == null || !mark.voided();
        }
    }

    private CorrectionPicture(List<Row> rows, Scale scale, double width) {
        this.rows = rows;
        this.scale = scale;
        this.width = width;
        this.marks = LETTER * longest(rows.stream().map(Row::label)) + 8;
        boolean marked = rows.stream().anyMatch(row -> row.mark() != null);
        double left = marks + (marked ? MARK + EDGE : EDGE);
        double right =
                width - EDGE - (written() ? FIGURE * longest(rows.stream().map(this::value)) : 0);
        this.axis = scale.equals(Scale.CORRECTION) ? axis(rows, left, right) : around(rows, left, right);
    }

    /** The picture of some rows, topmost first, at least one; drawn for some widths. */
    static Map<Integer, String> of(String title, List<Row> rows) {
        return of(title, rows, Scale.CORRECTION);
    }

    /** The same of something else. */
    static Map<Integer, String> of(String title, List<Row> rows, Scale scale) {
        return Drawn.inAColumn(width -> new CorrectionPicture(rows, scale, width).draw(title));
    }

    private static int longest(Stream<String> words) {
        return words.mapToInt(String::length).max().orElse(0);
    }

    private boolean written() {
        return width >= VALUES;
    }

    private String value(Row row) {
        return scale.of(row.factor());
    }

    private String draw(String title) {
        double bottom = TOP + rows.size() * ROW;
        Svg svg = Svg.sized(width, bottom + 44, "narrowing", title, words(), false);
        List<Double> named = new ArrayList<>();
        scale.ticks.stream()
                .filter(tick -> Math.log(tick) >= axis.low() && Math.log(tick) <= axis.high())
                .sorted(Comparator.comparingDouble(tick -> Math.abs(Math.log(tick))))
                .forEach(tick -> {
                    double x = axis.at(Math.log(tick));
                    svg.stroke(tick == 1 ? "grid one" : "grid", Paint.LINE, x, TOP, x, bottom);
                    if (named.stream().allMatch(other -> Math.abs(other - x) >= APART)) {
                        named.add(x);
                        svg.words(
                                "number",
                                false,
                                x,
                                bottom + 17,
                                TEXT,
                                Weight.REGULAR,
                                Anchor.MIDDLE,
                                scale.tick.apply(tick));
                    }
                });
        for (int i = 0; i < rows.size(); i++) {
            draw(svg, rows.get(i), TOP + (i + 0.5) * ROW, i == rows.size() - 1);
        }
        svg.words("caption", false, axis.end(), bottom + 37, TEXT, Weight.REGULAR, Anchor.END, scale.caption);
        return svg.end();
    }

    private static Axis around(List<Row> rows, double left, double right) {
        double low = rows.stream().mapToDouble(row -> row.factor().low()).min().orElseThrow();
        double high =
                rows.stream().mapToDouble(row -> row.factor().high()).max().orElseThrow();
        return new Axis(Math.log(low / BESIDE), Math.log(high * BESIDE), left, right);
    }

    private static Axis axis(List<Row> rows, double left, double right) {
        double reach = rows.stream()
                .mapToDouble(
                        row -> Math.max(row.factor().high(), 1 / row.factor().low()))
                .max()
                .orElse(2);
        double reached = Math.log(Math.min(WIDEST, Math.max(1.45, reach * 1.03)));
        return new Axis(-reached, reached, left, right);
    }

    private void draw(Svg svg, Row row, double y, boolean last) {
        Weight weight = last ? Weight.BOLD : Weight.REGULAR;
        double base = y + TEXT * 0.36;
        svg.words("label", false, 0, base, TEXT, weight, Anchor.START, row.label());
        if (row.mark() != null) {
            row.mark()
                    .draw(svg, marks + MARK / 2, y + MARK / 4, MARK, row.mark().words());
        }
        double low = axis.within(Math.log(row.factor().low()));
        double high = axis.within(Math.log(row.factor().high()));
        double median = axis.within(Math.log(row.factor().median()));
        svg.stroke(
                "bar" + (last ? " last" : "") + (row.counted() ? "" : " out"),
                row.counted() ? Paint.STRONG : Paint.DASHES,
                low,
                y,
                high,
                y);
        svg.stroke("median", Paint.STRONG, median, y - 8, median, y + 8);
        if (written()) {
            svg.words("value", false, width, base, TEXT, weight, Anchor.END, value(row));
        }
    }

    private String words() {
        StringBuilder words = new StringBuilder("Median and 90 % interval of each. ");
        rows.forEach(row -> words.append(row.label())
                .append(row.mark() == null ? "" : ", " + row.mark().words())
                .append(": ")
                .append(value(row))
                .append(". "));
        return words.toString();
    }
}
