package org.sunder.http;

import java.math.BigDecimal;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
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
     * @throws IllegalStateException where the stored unit is unknown
     */
    public static <U extends Enum<U> & Unit, Q> Q read(
            String digits, String symbol, Class<U> units, BiFunction<BigDecimal, U, Q> maker) {
        for (U unit : units.getEnumConstants()) {
            if (unit.symbol().equals(symbol)) {
                return maker.apply(new BigDecimal(digits), unit);
            }
        }
        throw new IllegalStateException("unknown unit in the database: " + symbol);
    }
}
