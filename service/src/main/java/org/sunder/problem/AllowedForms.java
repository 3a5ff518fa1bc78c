package org.sunder.problem;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says in words what a value of a type may be, without showing class names. */
public final class AllowedForms {

    private AllowedForms() {}

    /** What may stand where a value of that type is read. */
    public static String of(@Nullable Class<?> type) {
        if (type == null) {
            return "of another form";
        }
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants()).map(String::valueOf).collect(Collectors.joining(", "));
        }
        return switch (type.getSimpleName()) {
            case "String" -> "a string";
            case "Integer", "int" -> "a whole number of at most 9 digits";
            case "Long", "long" -> "a whole number";
            case "Double", "double", "BigDecimal" -> "a number";
            case "Boolean", "boolean" -> "true or false";
            case "UUID" -> "a UUID";
            case "OffsetDateTime" -> "a time with offset, such as 2026-05-03T10:20:00+01:00";
            case "List", "Set" -> "a list";
            default -> "an object";
        };
    }
}
