package org.sunder.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Places labels above a line, each on a pole that stands on its point. A label lies to the left of its pole, to the right or
 * across it; no label lies on another, and a pole passes no label where that can be helped.
 */
final class Flags {

    private static final double GAP = 5;
    private static final int MOST_LANES = 12;

    private final double left;
    private final double right;
    private final List<Placed> placed = new ArrayList<>();

    /** Labels that stay between two edges. */
    Flags(double left, double right) {
        this.left = left;
        this.right = right;
    }

    /** On which side of its pole a label lies. */
    enum Side {
        LEFT,
        RIGHT,
        ACROSS
    }

    /**
     * A label with its place.
     *
     * @param pole where its pole stands
     * @param from where the label begins
     * @param to where it ends
     * @param lane 0 is the lowest
     * @param side where it lies
     */
    record Placed(double pole, double from, double to, int lane, Side side) {}

    /**
     * Places a label.
     *
     * @param pole where its pole stands
     * @param width of the label
     * @param preferred sides to try, first the best
     */
    Placed place(double pole, double width, Side... preferred) {
        Placed found = find(pole, width, true, preferred);
        if (found == null) {
            found = find(pole, width, false, preferred);
        }
        Placed kept = found == null ? at(pole, width, lanes(), Side.ACROSS) : found;
        placed.add(kept);
        return kept;
    }

    /** How many lanes are in use. */
    int lanes() {
        return 1 + placed.stream().mapToInt(Placed::lane).max().orElse(-1);
    }

    private @org.jspecify.annotations.Nullable Placed find(
            double pole, double width, boolean clearPoles, Side... preferred) {
        for (int lane = 0; lane < MOST_LANES; lane++) {
            for (Side side : preferred) {
                Placed tried = at(pole, width, lane, side);
                boolean inside = tried.from >= left && tried.to <= right;
                if (inside && placed.stream().noneMatch(other -> collide(tried, other, clearPoles))) {
                    return tried;
                }
            }
        }
        return null;
    }

    /** Across, a label is pushed inwards where it would leave the picture; its pole stays below it. */
    private Placed at(double pole, double width, int lane, Side side) {
        double from = switch (side) {
            case LEFT -> pole - width;
            case RIGHT -> pole;
            case ACROSS -> Math.max(left, Math.min(pole - width / 2, right - width));
        };
        return new Placed(pole, from, from + width, lane, side);
    }

    private static boolean collide(Placed a, Placed b, boolean clearPoles) {
        if (a.lane == b.lane) {
            boolean backToBack = a.pole == b.pole && a.side != b.side && a.side != Side.ACROSS && b.side != Side.ACROSS;
            double gap = backToBack ? 0 : GAP;
            return a.from < b.to + gap && a.to > b.from - gap;
        }
        Placed low = a.lane < b.lane ? a : b;
        double pole = a.lane < b.lane ? b.pole : a.pole;
        return clearPoles && pole > low.from + 1 && pole < low.to - 1;
    }
}
