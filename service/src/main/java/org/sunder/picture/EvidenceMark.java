package org.sunder.picture;

import org.sunder.engine.planning.Evidence;
import org.sunder.picture.Svg.Paint;

/** The mark of an evidence state: a shape of its own for each, so that it reads without its tint. */
final class EvidenceMark {

    private static final double UNITS = 16; // a mark is drawn on a square of these

    private EvidenceMark() {}

    /**
     * Draws the mark of a state.
     *
     * @param left of its square
     * @param top of its square
     * @param side of its square
     */
    static void draw(Svg svg, Evidence evidence, double left, double top, double side) {
        svg.openAt("evidence", left, top, side / UNITS);
        switch (evidence) {
            case NONE -> svg.shape("line", Paint.DASHES, "M14 8A6 6 0 1 1 14 7.9Z");
            case BUILDING ->
                svg.shape("full", Paint.INK, "M1 10H4.5V15H1ZM6 6H9.5V15H6Z")
                        .shape("line", Paint.LINE, "M11.5 1.5H14.5V14.5H11.5Z");
            case SUFFICIENT ->
                svg.shape("full", Paint.INK, "M16 8A8 8 0 1 1 16 7.9Z")
                        .shape("tick", Paint.CANVAS, "M3.6 8.4L5.2 6.8L7.2 8.8L11.2 4.6L12.7 6.1L7.2 11.9Z");
            case STALE ->
                svg.shape("line", Paint.STRONG, "M13.6 5.6A6 6 0 1 0 13.9 9.6")
                        .shape("full", Paint.INK, "M15.6 1.5V7.2H9.9Z");
            case CONFLICTING -> svg.shape("full", Paint.INK, "M0 2.5L7.2 8L0 13.5ZM16 2.5L8.8 8L16 13.5Z");
        }
        svg.close();
    }
}
