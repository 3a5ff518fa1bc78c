package org.sunder.json;

/** Text as every database can keep it. */
public final class StoredText {

    private StoredText() {}

    /** Whether it can be kept: PostgreSQL keeps neither U+0000 nor half a surrogate pair. */
    public static boolean storable(String text) {
        return text.indexOf(0) < 0
                && text.codePoints().noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }
}
