package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** A unit of one dimension: SI value = (value + offset) · factor, both exact decimals. */
public interface Unit {

    /** The symbol people and the API use, e.g. {@code mm}. */
    String symbol();

    /** SI units per one of this unit. */
    BigDecimal factor();

    /** What is added to a value before scaling; zero but for temperatures. */
    default BigDecimal offset() {
        return BigDecimal.ZERO;
    }
}
