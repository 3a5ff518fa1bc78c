package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of mass; factors to kilograms: defined values, NIST SP 811 (2008) Appendix B. */
public enum MassUnit implements Unit {
    GRAM("g", "0.001"),
    KILOGRAM("kg", "1"),
    OUNCE("oz", "0.028349523125"),
    POUND("lb", "0.45359237"),
    GRAIN("gr", "0.00006479891");

    private final String symbol;
    private final BigDecimal factor;

    MassUnit(String symbol, String factor) {
        this.symbol = symbol;
        this.factor = new BigDecimal(factor);
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public BigDecimal factor() {
        return factor;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
