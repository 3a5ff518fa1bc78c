package org.sunder.persistence;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Decimals;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.Unit;

/** A quantity in two text columns, so that its digits come back as they were written. */
public final class QuantityColumns {

    private QuantityColumns() {}

    /** The digits to store. */
    public static @Nullable String digits(@Nullable Quantity<?> quantity) {
        return quantity == null ? null : quantity.value().toPlainString();
    }

    /** The unit to store. */
    public static @Nullable String unit(@Nullable Quantity<?> quantity) {
        return quantity == null ? null : quantity.unit().symbol();
    }

    /**
     * Reads a quantity back.
     *
     * @throws IllegalStateException where the stored digits are no number or beyond its bound, or the unit is unknown
     */
    public static <U extends Enum<U> & Unit, Q> Q read(
            String digits, String symbol, Class<U> units, BiFunction<BigDecimal, U, Q> maker) {
        return find(digits, symbol, units, maker)
                .orElseThrow(() -> new IllegalStateException("no quantity in the database: " + digits + " " + symbol));
    }

    /** Reads a quantity back; empty where it is not there, is no number or beyond its bound, or has an unknown unit. */
    public static <U extends Enum<U> & Unit, Q> Optional<Q> find(
            @Nullable String digits, @Nullable String symbol, Class<U> units, BiFunction<BigDecimal, U, Q> maker) {
        if (digits == null || symbol == null) {
            return Optional.empty();
        }
        return Decimals.find(digits)
                .flatMap(value -> Arrays.stream(units.getEnumConstants())
                        .filter(unit -> unit.symbol().equals(symbol))
                        .findFirst()
                        .map(unit -> maker.apply(value, unit)));
    }
}
