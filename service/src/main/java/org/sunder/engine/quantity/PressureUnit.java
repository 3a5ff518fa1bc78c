package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of pressure; factors to pascals: defined values, NIST SP 811 (2008) Appendix B. */
public enum PressureUnit implements Unit {
    PASCAL("Pa", "1"),
    KILOPASCAL("kPa", "1000"),
    BAR("bar", "100000"),
    POUND_PER_SQUARE_INCH("psi", "6894.757293168361336722673445346890694");

    private final String symbol;
    private final BigDecimal factor;

    PressureUnit(String symbol, String factor) {
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
