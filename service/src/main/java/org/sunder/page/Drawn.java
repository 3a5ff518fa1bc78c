package org.sunder.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;

/** One picture drawn for each width that a page may give it; the style sheet shows the one that fits, a little larger where there is room. */
final class Drawn {

    private static final int[] SEAT = {248, 320, 480};
    private static final int[] NARROW = {248, 320, 480, 720};
    private static final int[] WIDE = {248, 320, 480, 720, 1000};

    private Drawn() {}

    /** At a joint or a rocket among several, of which a page may hold dozens: half as wide as the page at most. */
    static Map<Integer, String> inASeat(IntFunction<String> picture) {
        return at(SEAT, picture);
    }

    /** In a column of a page. */
    static Map<Integer, String> inAColumn(IntFunction<String> picture) {
        return at(NARROW, picture);
    }

    /** Across a page. */
    static Map<Integer, String> across(IntFunction<String> picture) {
        return at(WIDE, picture);
    }

    private static Map<Integer, String> at(int[] widths, IntFunction<String> picture) {
        Map<Integer, String> drawn = new LinkedHashMap<>();
        for (int width : widths) {
            drawn.put(width, picture.apply(width));
        }
        return drawn;
    }
}
