package org.sunder.picture;

import java.util.Locale;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.picture.Svg.Paint;

/**
 * The mark of a firing: a nose block and a tail block, the two sections, on one base line, so that one mark never reads as
 * two. Closed, ajar or apart says what happened; everything else is told by shape too.
 *
 * @param outcome closed, ajar or apart
 * @param voided in outline, struck through, on a dashed base line
 * @param flight the tail block carries a fin
 * @param earlierSetup in outline, on a tray with its ends turned up: carried over from a setup that is no longer in force
 */
public record OutcomeMark(Outcome outcome, boolean voided, boolean flight, boolean earlierSetup) {

    /** Widths to heights. */
    static final double ASPECT = 2;

    private static final double UNITS = 40; // a mark is drawn on 40 by 20 of these

    /**
     * Draws the mark.
     *
     * @param middle of its base line
     * @param base height of its base line
     * @param width how wide it is
     * @param words what a pointer over it says
     */
    public void draw(Svg svg, double middle, double base, double width, String words) {
        Pen pen = new Pen(middle - width / 2, base - width / ASPECT * 18.5 / 20, width / UNITS);
        boolean outline = voided || earlierSetup;
        Paint paint = outline ? Paint.OUTLINE : Paint.INK;
        svg.open("mark " + outcome + (voided ? " void" : "") + (earlierSetup ? " earlier" : ""), words);
        svg.shape("block" + (outline ? " open" : ""), paint, nose(pen));
        svg.shape("block" + (outline ? " open" : ""), paint, tail(pen));
        svg.shape("base", voided ? Paint.DASHES : Paint.STRONG, base(pen));
        if (voided) {
            svg.shape("strike", Paint.STRONG, pen.path("M6 17L34 0"));
        }
        svg.close();
    }

    /** In words: "flight, separated, void". */
    public String words() {
        return (flight ? "flight, " : "")
                + outcome
                + (voided ? ", void" : "")
                + (earlierSetup ? ", in an earlier setup" : "");
    }

    private String nose(Pen pen) {
        double back = switch (outcome) {
            case NONE -> 19;
            case PARTIAL -> 16.5;
            case SEPARATED -> 13;
        };
        double tip = back - 14;
        return pen.path(String.format(
                Locale.ROOT,
                "M%.1f 3H%.1fC%.1f 3 %.1f 6 %.1f 9S%.1f 15 %.1f 15H%.1fZ",
                back,
                tip + 9,
                tip + 3,
                tip,
                tip,
                tip + 3,
                tip + 9,
                back));
    }

    private String tail(Pen pen) {
        return switch (outcome) {
            case NONE -> pen.path(flight ? "M21 3H30L36 -1V3V15H21Z" : "M21 3H35V15H21Z");
            case PARTIAL ->
                pen.path(flight ? "M20 11L30 2.2L34.2 -2.6L37.2 7.6L26.8 16Z" : "M20 11L32.4 1.5L38.4 9L26.8 16Z");
            case SEPARATED -> pen.path(flight ? "M27 3H34L40 -1V3V15H27Z" : "M27 3H40V15H27Z");
        };
    }

    private String base(Pen pen) {
        return pen.path(earlierSetup ? "M1 14V18.5H39V14" : "M1 18.5H39");
    }

    /** Moves and scales the data of a path: every number pair, and the numbers of H and V. */
    private record Pen(double left, double top, double scale) {

        double x(double units) {
            return left + units * scale;
        }

        double y(double units) {
            return top + units * scale;
        }

        String path(String data) {
            StringBuilder moved = new StringBuilder();
            boolean across = true;
            char command = 'M';
            for (String token : data.replaceAll("([A-Z])", " $1 ").strip().split("\\s+", -1)) {
                if (Character.isLetter(token.charAt(0))) {
                    command = token.charAt(0);
                    across = command != 'V';
                    moved.append(command);
                    continue;
                }
                double units = Double.parseDouble(token);
                moved.append(String.format(Locale.ROOT, "%.2f ", across ? x(units) : y(units)));
                across = command == 'H' || (command != 'V' && !across);
            }
            return moved.toString().strip();
        }
    }
}
