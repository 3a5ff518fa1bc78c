package org.sunder.problem;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with the input.
 *
 * @param pointer JSON pointer (RFC 6901) into the body, or the name of a parameter or header
 * @param detail what is wrong, for a person
 * @param code a stable word for it
 * @param allowed what would be allowed
 * @param value what was rejected, as text, cut to 200 characters
 */
public record Fault(
        String pointer,
        String detail,
        String code,
        @Nullable String allowed,
        @Nullable String value) {

    private static final int LONGEST_VALUE = 200;

    public Fault {
        pointer = writable(cut(pointer));
        detail = writable(detail);
        value = value == null ? null : writable(cut(value));
    }

    /** What is wrong and what would be allowed, where that says more. */
    public String words() {
        boolean more = allowed != null && !allowed.equals(detail) && !code.equals("missing");
        return detail + (more ? " (allowed: " + allowed + ")" : "");
    }

    private static String cut(String text) {
        return text.length() > LONGEST_VALUE ? text.substring(0, LONGEST_VALUE) + "…" : text;
    }

    /** Half a surrogate pair, sent so or left by a cut, cannot be written as UTF-8. */
    private static String writable(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }
}
