package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of acceleration; factors to metres per second squared: defined values, NIST SP 811 (2008) Appendix B. */
public enum AccelerationUnit implements Unit {
    METRE_PER_SECOND_SQUARED("m/s2", "1"),
    STANDARD_GRAVITY("g0", "9.80665");

    private final String symbol;
    private final BigDecimal factor;

    AccelerationUnit(String symbol, String factor) {
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
