package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of speed; factors to metres per second: defined values, NIST SP 811 (2008) Appendix B. */
public enum SpeedUnit implements Unit {
    METRE_PER_SECOND("m/s", "1"),
    FOOT_PER_SECOND("ft/s", "0.3048");

    private final String symbol;
    private final BigDecimal factor;

    SpeedUnit(String symbol, String factor) {
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
