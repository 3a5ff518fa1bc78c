package org.sunder.picture;

/** Lengths as a picture writes them, to a tenth: a page holds tens of thousands, too many for a general formatter. */
final class Tenths {

    private Tenths() {}

    /** Adds a finite length to a text. */
    static StringBuilder add(StringBuilder out, double length) {
        long tenths = Math.round(Math.abs(length) * 10);
        if (length < 0 && tenths > 0) {
            out.append('-');
        }
        out.append(tenths / 10);
        return tenths % 10 == 0 ? out : out.append('.').append(tenths % 10);
    }
}
