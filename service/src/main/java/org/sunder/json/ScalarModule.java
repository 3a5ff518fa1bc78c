package org.sunder.json;

import java.math.BigDecimal;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Decimals;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.module.SimpleModule;

/** Numbers, truth values and strings are what they are in JSON: "3" is no number, 2.5 no whole one. */
final class ScalarModule extends SimpleModule {

    private static final int MORE_THAN_NINE_DIGITS = 1_000_000_000;

    ScalarModule(FaultSink sink) {
        super("scalars");
        addDeserializer(
                Integer.class,
                new Strict<>(
                        Set.of(JsonToken.VALUE_NUMBER_INT),
                        "a whole number of at most 9 digits",
                        ScalarModule::ofNineDigits,
                        sink));
        addDeserializer(
                BigDecimal.class,
                new Strict<>(
                        Set.of(JsonToken.VALUE_NUMBER_INT, JsonToken.VALUE_NUMBER_FLOAT),
                        "a number of " + Decimals.ALLOWED,
                        ScalarModule::bounded,
                        sink));
        addDeserializer(
                Boolean.class,
                new Strict<>(
                        Set.of(JsonToken.VALUE_TRUE, JsonToken.VALUE_FALSE),
                        "true or false",
                        JsonParser::getBooleanValue,
                        sink));
        addDeserializer(
                String.class,
                new Strict<>(
                        Set.of(JsonToken.VALUE_STRING),
                        "a string of whole characters, without U+0000",
                        ScalarModule::storable,
                        sink));
    }

    private static @Nullable Integer ofNineDigits(JsonParser parser) {
        if (parser.getNumberType() != JsonParser.NumberType.INT) {
            return null;
        }
        int value = parser.getIntValue();
        return value > -MORE_THAN_NINE_DIGITS && value < MORE_THAN_NINE_DIGITS ? value : null;
    }

    private static @Nullable BigDecimal bounded(JsonParser parser) {
        BigDecimal value = parser.getDecimalValue();
        return Decimals.bounded(value) ? value : null;
    }

    /** Null where a database cannot keep the text. */
    private static @Nullable String storable(JsonParser parser) {
        String text = parser.getString();
        return StoredText.storable(text) ? text : null;
    }

    private static final class Strict<T> extends ValueDeserializer<T> {

        private final Set<JsonToken> tokens;
        private final String allowed;
        private final Function<JsonParser, @Nullable T> read;
        private final FaultSink sink;

        Strict(Set<JsonToken> tokens, String allowed, Function<JsonParser, @Nullable T> read, FaultSink sink) {
            this.tokens = tokens;
            this.allowed = allowed;
            this.read = read;
            this.sink = sink;
        }

        @Override
        public @Nullable T deserialize(JsonParser parser, DeserializationContext context) {
            String pointer = parser.streamReadContext().pathAsPointer().toString();
            T value = tokens.contains(parser.currentToken()) ? read.apply(parser) : null;
            if (value == null) {
                String text = parser.currentToken().isScalarValue() ? parser.getString() : null;
                String code = parser.currentToken() == JsonToken.VALUE_NULL ? "missing" : "wrong-form";
                sink.accept(pointer, allowed + " is needed", code, allowed, text);
                parser.skipChildren();
            }
            return value;
        }
    }
}
