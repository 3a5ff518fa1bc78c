package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of area; factors to metres: defined values, NIST SP 811 (2008) Appendix B. */
public enum AreaUnit implements Unit {
    SQUARE_MILLIMETRE("mm2", "0.000001"),
    SQUARE_CENTIMETRE("cm2", "0.0001"),
    SQUARE_METRE("m2", "1"),
    SQUARE_INCH("in2", "0.00064516");

    private final String symbol;
    private final BigDecimal factor;

    AreaUnit(String symbol, String factor) {
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
