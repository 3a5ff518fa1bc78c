package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of force; factors to newtons: defined values, NIST SP 811 (2008) Appendix B. */
public enum ForceUnit implements Unit {
    NEWTON("N", "1"),
    POUND_FORCE("lbf", "4.4482216152605");

    private final String symbol;
    private final BigDecimal factor;

    ForceUnit(String symbol, String factor) {
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
