package org.sunder.photo;

import java.time.Instant;
import java.util.UUID;

/**
 * What is known of the photo of a test, without its bytes.
 *
 * @param testId the test it shows
 * @param type what kind it is
 * @param width pixels across, before it is turned the way up that it is shown
 * @param height pixels down, as the width
 * @param bytes how many bytes the file has
 * @param digest SHA-256 of the file, in hexadecimal
 * @param storedAt when the service took it in
 */
public record Photo(UUID testId, PhotoType type, int width, int height, int bytes, String digest, Instant storedAt) {

    private static final int TAG_DIGITS = 32;

    /** Its entity tag: another file has another. */
    public String tag() {
        return "\"" + digest.substring(0, TAG_DIGITS) + "\"";
    }

    /** Where it is read. */
    public String address() {
        return "/api/ground-tests/" + testId + "/photo";
    }

    /** What the file is called where it is saved. */
    public String fileName() {
        return "test-" + testId + "." + type.ending();
    }
}
