package org.sunder.problem;

import java.util.Arrays;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says in words what a parameter of a type may be. */
final class Parameters {

    private Parameters() {}

    static String allowed(@Nullable Class<?> type) {
        if (type == null) {
            return "of another form";
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants()).map(String::valueOf).collect(Collectors.joining(", "));
        }
        if (type == UUID.class) {
            return "a UUID";
        }
        if (type == Integer.class || type == int.class) {
            return "a whole number";
        }
        if (Number.class.isAssignableFrom(type) || type == double.class) {
            return "a number";
        }
        return "of another form";
    }
}
