package org.sunder.page;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.picture.Axis;
import org.sunder.picture.OutcomeMark;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Line;

/** Corrections as intervals, one a row: how a joint's narrowed test by test, or how those of a fleet compare. */
final class CorrectionPicture {

    private static final double WIDTH = 440;
    private static final double LEFT = 154;
    private static final double RIGHT = WIDTH - 24;
    private static final double TOP = 12;
    private static final double ROW = 30;
    private static final double SIZE = 15;
    private static final double MARK = 30;
    private static final double WIDEST = 4;
    private static final double BESIDE = 1.12;

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

    private CorrectionPicture() {}

    /** The picture of some rows, topmost first; at least one. */
    static String of(String title, List<Row> rows) {
        return of(title, rows, Scale.CORRECTION);
    }

    /** The same of something else. */
    static String of(String title, List<Row> rows, Scale scale) {
        Axis axis = scale.equals(Scale.CORRECTION) ? axis(rows) : around(rows);
        double bottom = TOP + rows.size() * ROW;
        Svg svg = new Svg(WIDTH, bottom + 48, title, words(rows, scale));
        for (double tick : scale.ticks) {
            double log = Math.log(tick);
            if (log >= axis.low() && log <= axis.high()) {
                svg.line(axis.at(log), TOP, axis.at(log), bottom, tick == 1 ? Line.THIN : Line.FAINT)
                        .text(axis.at(log), bottom + 18, SIZE, Anchor.MIDDLE, scale.tick.apply(tick));
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            draw(svg, rows.get(i), TOP + (i + 0.5) * ROW, axis);
        }
        svg.text((LEFT + RIGHT) / 2, bottom + 38, SIZE, Anchor.MIDDLE, scale.caption);
        return svg.end();
    }

    private static Axis around(List<Row> rows) {
        double low = rows.stream().mapToDouble(row -> row.factor().low()).min().orElseThrow();
        double high =
                rows.stream().mapToDouble(row -> row.factor().high()).max().orElseThrow();
        return new Axis(Math.log(low / BESIDE), Math.log(high * BESIDE), LEFT, RIGHT);
    }

    private static Axis axis(List<Row> rows) {
        double reach = rows.stream()
                .mapToDouble(
                        row -> Math.max(row.factor().high(), 1 / row.factor().low()))
                .max()
                .orElse(2);
        double reached = Math.log(Math.min(WIDEST, Math.max(1.45, reach * 1.03)));
        return new Axis(-reached, reached, LEFT, RIGHT);
    }

    private static void draw(Svg svg, Row row, double y, Axis axis) {
        svg.text(0, y + 5, SIZE, Anchor.START, row.label());
        if (row.mark() != null) {
            row.mark().draw(svg, LEFT - 24, y + MARK / 4, MARK, row.mark().words());
        }
        double low = axis.within(Math.log(row.factor().low()));
        double high = axis.within(Math.log(row.factor().high()));
        double median = axis.within(Math.log(row.factor().median()));
        svg.line(low, y, high, y, row.counted() ? Line.BOLD : Line.DOTTED);
        svg.line(low, y - 5, low, y + 5, Line.THIN).line(high, y - 5, high, y + 5, Line.THIN);
        svg.line(median, y - 8, median, y + 8, Line.BOLD);
    }

    private static String words(List<Row> rows, Scale scale) {
        StringBuilder words = new StringBuilder("Median and 90 % interval of each. ");
        rows.forEach(row -> words.append(row.label())
                .append(row.mark() == null ? "" : ", " + row.mark().words())
                .append(": ")
                .append(scale.of(row.factor()))
                .append(". "));
        return words.toString();
    }
}
