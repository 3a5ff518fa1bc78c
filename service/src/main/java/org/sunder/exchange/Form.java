package org.sunder.exchange;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Decimals;
import org.sunder.engine.quantity.Unit;
import org.sunder.json.StoredText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * One kind of value: as it stands in the database and as it stands in an export.
 *
 * @param allowed what may stand in an export, for a person
 * @param fromRow reads a column
 * @param show the JSON of a value
 * @param parse the value of JSON; throws IllegalArgumentException or DateTimeException where it is not one
 */
record Form(String allowed, FromRow fromRow, Function<Object, JsonNode> show, Function<JsonNode, Object> parse) {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("9998-01-01T00:00:00Z");

    static final Form ID = new Form(
            "a UUID",
            (row, column) -> row.getObject(column, UUID.class),
            id -> JSON.stringNode(id.toString()),
            node -> UUID.fromString(string(node)));

    static final Form TIME = new Form(
            "a time in UTC between 1900 and 9998, to the microsecond",
            Form::time,
            time -> JSON.stringNode(((OffsetDateTime) time).toInstant().toString()),
            node -> {
                Instant time = Instant.parse(string(node));
                require(!time.isBefore(EARLIEST) && time.isBefore(LATEST));
                require(time.equals(time.truncatedTo(ChronoUnit.MICROS)));
                return time.atOffset(ZoneOffset.UTC);
            });

    static final Form YES_OR_NO = new Form(
            "true or false",
            (row, column) -> row.getBoolean(column),
            value -> JSON.booleanNode((Boolean) value),
            node -> {
                require(node.isBoolean());
                return node.booleanValue();
            });

    /** A decimal kept as text with its digits. */
    static final Form POSITIVE = new Form(
            "a decimal above 0 as text, " + Decimals.ALLOWED,
            ResultSet::getString,
            text -> JSON.stringNode((String) text),
            node -> {
                String text = string(node);
                BigDecimal value = Decimals.find(text).orElseThrow(IllegalArgumentException::new);
                require(value.signum() > 0 && value.toPlainString().equals(text));
                return text;
            });

    /** Reads a column that is not null. */
    @FunctionalInterface
    interface FromRow {
        @Nullable Object read(ResultSet row, String column) throws SQLException;
    }

    static Form text(int longest) {
        return new Form(
                "at most " + longest + " characters",
                ResultSet::getString,
                text -> JSON.stringNode((String) text),
                node -> {
                    String text = string(node);
                    require(text.length() <= longest && StoredText.storable(text));
                    return text;
                });
    }

    static Form whole(int least, int most) {
        return new Form(
                "a whole number from " + least + " to " + most,
                (row, column) -> row.getInt(column),
                value -> JSON.numberNode((Integer) value),
                node -> {
                    require(node.isInt() && node.intValue() >= least && node.intValue() <= most);
                    return node.intValue();
                });
    }

    static Form real(double least, double most) {
        return new Form(
                "a number from " + least + " to " + most,
                (row, column) -> row.getDouble(column),
                value -> JSON.numberNode((Double) value),
                node -> {
                    require(node.isNumber());
                    // As a decimal first: a number beyond every double cannot be read as one.
                    BigDecimal value = node.decimalValue();
                    require(value.compareTo(BigDecimal.valueOf(least)) >= 0
                            && value.compareTo(BigDecimal.valueOf(most)) <= 0);
                    return value.doubleValue();
                });
    }

    /** A file, in an export as text in Base64. */
    static Form file(int mostBytes) {
        return new Form(
                "Base64 of at most " + mostBytes + " bytes",
                ResultSet::getBytes,
                bytes -> JSON.binaryNode((byte[]) bytes),
                node -> {
                    String text = string(node);
                    require(text.length() <= textOf(mostBytes));
                    return Base64.getDecoder().decode(text);
                });
    }

    /** How long the text of so many bytes is in Base64: four letters for each three, or fewer, bytes. */
    static long textOf(int bytes) {
        return 4 * ((bytes + 2L) / 3);
    }

    /** A constant kept by its name and shown as its word. */
    static <T extends Enum<T>> Form word(Class<T> words) {
        return choice(words, constant -> constant.name(), String::valueOf);
    }

    /** A unit kept by its symbol. */
    static <T extends Enum<T> & Unit> Form unit(Class<T> units) {
        return choice(units, unit -> unit.symbol(), unit -> unit.symbol());
    }

    /** A word kept as it is shown. */
    static <T extends Enum<T>> Form kept(Class<T> words) {
        return choice(words, String::valueOf, String::valueOf);
    }

    private static <T extends Enum<T>> Form choice(Class<T> type, Function<T, String> kept, Function<T, String> shown) {
        T[] all = type.getEnumConstants();
        return new Form(
                Arrays.stream(all).map(shown).collect(Collectors.joining(", ")),
                ResultSet::getString,
                text -> JSON.stringNode(find(all, kept, (String) text, shown).orElse((String) text)),
                node -> find(all, shown, string(node), kept).orElseThrow(IllegalArgumentException::new));
    }

    /** Empty where no constant has the text: a hand in the database may have put it there. */
    private static <T> Optional<String> find(T[] all, Function<T, String> by, String text, Function<T, String> wanted) {
        return Arrays.stream(all)
                .filter(each -> by.apply(each).equals(text))
                .findFirst()
                .map(wanted);
    }

    private static @Nullable Object time(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant().atOffset(ZoneOffset.UTC);
    }

    private static String string(JsonNode node) {
        require(node.isString());
        return node.stringValue();
    }

    private static void require(boolean holds) {
        if (!holds) {
            throw new IllegalArgumentException("not of this form");
        }
    }
}
