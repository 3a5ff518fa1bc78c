package org.sunder.config;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.deser.DeserializationProblemHandler;

/** Notes what is wrong in a body and reads on, so that one answer names every fault. */
final class GatheringFaults extends DeserializationProblemHandler {

    private final FaultSink sink;

    GatheringFaults(FaultSink sink) {
        this.sink = sink;
    }

    @Override
    public boolean handleUnknownProperty(
            DeserializationContext context,
            JsonParser parser,
            ValueDeserializer<?> deserializer,
            Object bean,
            String name) {
        var known = deserializer.getKnownPropertyNames();
        String allowed = known == null
                ? null
                : known.stream().map(String::valueOf).sorted().collect(Collectors.joining(", "));
        sink.accept(here(parser), "unknown field", allowed, name);
        parser.skipChildren();
        return true;
    }

    @Override
    public @Nullable Object handleWeirdStringValue(
            DeserializationContext context, Class<?> target, String value, String message) {
        sink.accept(here(context.getParser()), words(target), allowed(target), value);
        return null;
    }

    @Override
    public @Nullable Object handleWeirdNumberValue(
            DeserializationContext context, Class<?> target, Number value, String message) {
        sink.accept(here(context.getParser()), words(target), allowed(target), value.toString());
        return null;
    }

    @Override
    public @Nullable Object handleUnexpectedToken(
            DeserializationContext context,
            JavaType target,
            JsonToken token,
            JsonParser parser,
            @Nullable String message) {
        Class<?> type = target.getRawClass();
        sink.accept(here(parser), words(type), allowed(type), token.isScalarValue() ? parser.getString() : null);
        parser.skipChildren();
        return null;
    }

    private static String here(JsonParser parser) {
        return parser.streamReadContext().pathAsPointer().toString();
    }

    private static String words(Class<?> type) {
        return type.isEnum() ? "not one of the allowed words" : "a value of another type is needed";
    }

    private static String allowed(Class<?> type) {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants()).map(String::valueOf).collect(Collectors.joining(", "));
        }
        return switch (type.getSimpleName()) {
            case "String" -> "a string";
            case "Integer", "int", "Long", "long" -> "a whole number";
            case "Double", "double", "BigDecimal" -> "a number";
            case "Boolean", "boolean" -> "true or false";
            case "UUID" -> "a UUID";
            case "OffsetDateTime" -> "a time with offset, such as 2026-05-03T10:20:00+01:00";
            case "List", "Set" -> "a list";
            default -> "an object";
        };
    }
}
