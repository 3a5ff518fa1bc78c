package org.sunder.web;

import java.util.Arrays;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** Strong entity tags from version numbers, and the If-Match that a change must carry. */
public final class EntityTags {

    private EntityTags() {}

    /** The tag of a version, with its quotes. */
    public static String of(long version) {
        return "\"v" + version + "\"";
    }

    /** What a change calls with the current version, see {@link #requireMatch}. */
    public static LongConsumer matching(@Nullable String ifMatch) {
        return version -> requireMatch(ifMatch, version);
    }

    /**
     * Checks that a change is based on the current version.
     *
     * @param ifMatch the header, or null where it was not sent
     * @param version the current version
     * @throws ProblemException 428 without the header, 412 when it names another version
     */
    public static void requireMatch(@Nullable String ifMatch, long version) {
        requireMatch(ifMatch, of(version));
    }

    /** As {@link #requireMatch(String, long)}, for what has a tag of its own. */
    public static void requireMatch(@Nullable String ifMatch, String tag) {
        if (ifMatch == null || ifMatch.isBlank()) {
            throw new ProblemException(
                    ProblemType.VERSION_REQUIRED, "Send If-Match with the ETag of the version you read.");
        }
        boolean named = Arrays.stream(ifMatch.split(",")).map(String::trim).anyMatch(tag::equals);
        if (!named && !ifMatch.trim().equals("*")) {
            throw new ProblemException(
                    ProblemType.VERSION_MISMATCH, "The current version is " + tag + ", not " + ifMatch + ".");
        }
    }
}
