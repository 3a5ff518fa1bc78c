package org.sunder.problem;

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
        if (value != null && value.length() > LONGEST_VALUE) {
            value = value.substring(0, LONGEST_VALUE) + "…";
        }
    }
}
