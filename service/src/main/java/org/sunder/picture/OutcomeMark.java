package org.sunder.picture;

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
        return pen.path(
                switch (outcome) {
                    case NONE -> "M19 3H14C8 3 5 6 5 9S8 15 14 15H19Z";
                    case PARTIAL -> "M16.5 3H11.5C5.5 3 2.5 6 2.5 9S5.5 15 11.5 15H16.5Z";
                    case SEPARATED -> "M13 3H8C2 3 -1 6 -1 9S2 15 8 15H13Z";
                });
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
            int at = 0;
            while (at < data.length()) {
                char next = data.charAt(at);
                if (Character.isLetter(next)) {
                    command = next;
                    across = command != 'V';
                    moved.append(command);
                    at++;
                } else if (next == ' ') {
                    moved.append(' ');
                    at++;
                } else {
                    int end = at + 1;
                    while (end < data.length() && ".0123456789".indexOf(data.charAt(end)) >= 0) {
                        end++;
                    }
                    double units = Double.parseDouble(data.substring(at, end));
                    Tenths.add(moved, across ? x(units) : y(units));
                    across = command == 'H' || (command != 'V' && !across);
                    at = end;
                }
            }
            return moved.toString();
        }
    }
}
