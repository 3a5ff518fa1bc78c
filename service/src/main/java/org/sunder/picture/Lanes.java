package org.sunder.picture;

import java.util.ArrayList;
import java.util.List;

/** Puts what stretches along a line into lanes, each thing in the lowest where it touches nothing. */
final class Lanes {

    private record Taken(int lane, double from, double to) {}

    private final double gap;
    private final List<Taken> taken = new ArrayList<>();

    /** Lanes in which things keep a gap between them. */
    Lanes(double gap) {
        this.gap = gap;
    }

    /** Takes the lowest free lane for something; 0 is the lowest. */
    int take(double from, double to) {
        int lane = 0;
        while (!free(lane, from, to)) {
            lane++;
        }
        take(lane, from, to);
        return lane;
    }

    /** Takes a place in a lane. */
    void take(int lane, double from, double to) {
        taken.add(new Taken(lane, from, to));
    }

    /** Whether something would touch nothing in a lane. */
    boolean free(int lane, double from, double to) {
        return taken.stream().noneMatch(t -> t.lane == lane && from < t.to + gap && to > t.from - gap);
    }

    /** How many lanes are in use. */
    int count() {
        return 1 + taken.stream().mapToInt(Taken::lane).max().orElse(-1);
    }
}
