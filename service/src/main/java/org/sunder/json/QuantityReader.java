package org.sunder.json;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Decimals;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.Unit;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ValueDeserializer;

/**
 * Reads {@code {"value": 98.0, "unit": "mm"}} with its digits as written.
 *
 * @param <U> units of the dimension
 * @param <Q> the quantity
 */
final class QuantityReader<U extends Enum<U> & Unit, Q extends Quantity<U>> extends ValueDeserializer<Q> {

    private final List<U> units;
    private final BiFunction<BigDecimal, U, Q> maker;
    private final FaultSink sink;

    QuantityReader(Class<U> units, BiFunction<BigDecimal, U, Q> maker, FaultSink sink) {
        this.units = List.of(units.getEnumConstants());
        this.maker = maker;
        this.sink = sink;
    }

    @Override
    public @Nullable Q deserialize(JsonParser parser, DeserializationContext context) {
        String pointer = parser.streamReadContext().pathAsPointer().toString();
        JsonNode node = context.readTree(parser);
        if (!node.isObject()) {
            sink.accept(
                    pointer, "a quantity is an object with a value and a unit", "wrong-form", form(), node.toString());
            return null;
        }
        for (String field : node.propertyNames()) {
            if (!field.equals("value") && !field.equals("unit")) {
                sink.accept(JsonPointers.under(pointer, field), "unknown field", "unknown-field", "value, unit", field);
            }
        }
        BigDecimal value = value(pointer + "/value", node.path("value"));
        U unit = unit(pointer + "/unit", node.path("unit"));
        return value == null || unit == null ? null : maker.apply(value, unit);
    }

    private @Nullable BigDecimal value(String pointer, JsonNode node) {
        if (!node.isNumber()) {
            sink.accept(pointer, "a number is needed", code(node), "a number", text(node));
            return null;
        }
        BigDecimal value = node.decimalValue();
        if (!Decimals.bounded(value)) {
            sink.accept(pointer, "the number is too long or too large", "wrong-form", Decimals.ALLOWED, text(node));
            return null;
        }
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    private @Nullable U unit(String pointer, JsonNode node) {
        for (U unit : units) {
            if (node.isString() && unit.symbol().equals(node.stringValue())) {
                return unit;
            }
        }
        sink.accept(
                pointer,
                node.isMissingNode() ? "the unit is missing" : "unknown unit",
                code(node),
                units.stream().map(Unit::symbol).collect(Collectors.joining(", ")),
                text(node));
        return null;
    }

    private static String code(JsonNode node) {
        return node.isMissingNode() || node.isNull() ? "missing" : "wrong-form";
    }

    private static String text(JsonNode node) {
        return node.isMissingNode() ? "" : node.toString();
    }

    private String form() {
        return "{\"value\": 1.5, \"unit\": \"" + units.get(0).symbol() + "\"} with a unit of "
                + Arrays.toString(units.toArray());
    }
}
