package org.sunder.groundtest;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A limit that a firing lay above. What was really fired is recorded, and marked. */
public enum Beyond {
    /** Above the ceiling of the setup fired. */
    CEILING("ceiling"),
    /** More than the largest step above the highest charge fired before without damage. */
    STEP("step"),
    /** Its parts left each other faster than the flyer stated that they may. */
    SPEED("speed");

    private final String word;

    Beyond(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }

    /** As stored: the words, or null where there is none. */
    public static @Nullable String stored(List<Beyond> beyond) {
        return beyond.isEmpty() ? null : beyond.stream().map(Beyond::toString).collect(Collectors.joining(" "));
    }

    /** As read; words unknown to this version are passed over. */
    public static List<Beyond> read(@Nullable String stored) {
        List<String> words = stored == null ? List.of() : List.of(stored.split(" ", -1));
        return Arrays.stream(values()).filter(one -> words.contains(one.word)).toList();
    }
}
