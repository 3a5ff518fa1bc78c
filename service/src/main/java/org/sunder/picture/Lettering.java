package org.sunder.picture;

import org.sunder.picture.Svg.Weight;

/**
 * How wide words are at most. Which face draws them is not known here, so widths are those of a wide one: words that are
 * kept apart by them never touch in another.
 */
final class Lettering {

    private static final double NARROW = 0.36;
    private static final double USUAL = 0.64;
    private static final double WIDE = 0.98;
    private static final double BOLD = 1.09;

    private Lettering() {}

    /** Width in pixels at a size in pixels. */
    static double width(String words, double size, Weight weight) {
        double width = words.codePoints().mapToDouble(Lettering::width).sum();
        return width * size * (weight == Weight.BOLD ? BOLD : 1);
    }

    /** Words cut to a width, with an ellipsis where something is missing. */
    static String cut(String words, double size, Weight weight, double room) {
        if (width(words, size, weight) <= room) {
            return words;
        }
        int length = words.length();
        while (length > 0 && width(words.substring(0, length) + "…", size, weight) > room) {
            length = words.offsetByCodePoints(length, -1);
        }
        return words.substring(0, length).strip() + "…";
    }

    private static double width(int letter) {
        if ("iljtfrI.,:;'!|()[] ".indexOf(letter) >= 0) {
            return NARROW;
        }
        boolean wide = "mwMW%@…".indexOf(letter) >= 0 || letter > 0x2000;
        return wide ? WIDE : USUAL;
    }
}
