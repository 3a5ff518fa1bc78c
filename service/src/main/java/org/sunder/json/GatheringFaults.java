package org.sunder.json;

import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.problem.AllowedForms;
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
        sink.accept(unknown(context, parser, name), "unknown field", "unknown-field", allowed, name);
        parser.skipChildren();
        return true;
    }

    @Override
    public @Nullable Object handleWeirdStringValue(
            DeserializationContext context, Class<?> target, String value, String message) {
        sink.accept(here(context.getParser()), words(target), "wrong-form", AllowedForms.of(target), value);
        return null;
    }

    @Override
    public @Nullable Object handleWeirdNumberValue(
            DeserializationContext context, Class<?> target, Number value, String message) {
        sink.accept(here(context.getParser()), words(target), "wrong-form", AllowedForms.of(target), value.toString());
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
        String value = token.isScalarValue() ? parser.getString() : null;
        sink.accept(here(parser), words(type), "wrong-form", AllowedForms.of(type), value);
        parser.skipChildren();
        return null;
    }

    /** What comes before the last known field is read out of a buffer, when the reader itself stands at the object's end. */
    private static String unknown(DeserializationContext context, JsonParser parser, String name) {
        JsonParser reader = context.getParser();
        return parser == reader ? here(parser) : JsonPointers.under(here(reader), name);
    }

    private static String here(JsonParser parser) {
        return parser.streamReadContext().pathAsPointer().toString();
    }

    private static String words(Class<?> type) {
        return type.isEnum() ? "not one of the allowed words" : "a value of another type is needed";
    }
}
