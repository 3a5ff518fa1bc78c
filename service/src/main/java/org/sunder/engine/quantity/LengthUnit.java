package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of length; factors to metres: defined values, NIST SP 811 (2008) Appendix B. */
public enum LengthUnit implements Unit {
    MILLIMETRE("mm", "0.001"),
    CENTIMETRE("cm", "0.01"),
    METRE("m", "1"),
    INCH("in", "0.0254"),
    FOOT("ft", "0.3048");

    private final String symbol;
    private final BigDecimal factor;

    LengthUnit(String symbol, String factor) {
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
