package org.sunder.web;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.problem.ProblemException;

/**
 * A position in a list ordered by time and id: opaque outside.
 *
 * @param at time of the last row seen
 * @param id its id
 */
public record Cursor(Instant at, UUID id) {

    /** Before everything, for newest-first lists. */
    public static final Cursor NEWEST =
            new Cursor(Instant.parse("9999-01-01T00:00:00Z"), new UUID(0xFFFFFFFFFFFFFFFFL, 0xFFFFFFFFFFFFFFFFL));

    /** The text that clients pass back. */
    public String encoded() {
        byte[] text = (at + "|" + id).getBytes(StandardCharsets.UTF_8);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(text);
    }

    /**
     * Reads a cursor.
     *
     * @param text what a client passed, or null for the start of the list
     * @throws ProblemException 400 where it is not a cursor of ours
     */
    public static Cursor decode(@Nullable String text) {
        if (text == null) {
            return NEWEST;
        }
        try {
            String[] parts = new String(Base64.getUrlDecoder().decode(text), StandardCharsets.UTF_8).split("\\|", 2);
            return new Cursor(Instant.parse(parts[0]), UUID.fromString(parts[1]));
        } catch (IllegalArgumentException | DateTimeException | ArrayIndexOutOfBoundsException e) {
            throw ProblemException.invalid(
                    "cursor", text, "the cursor is not one that this service gave", "the value of next, unchanged");
        }
    }
}
