package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of volume; factors to cubic metres: defined values, NIST SP 811 (2008) Appendix B. */
public enum VolumeUnit implements Unit {
    MILLILITRE("mL", "0.000001"),
    LITRE("L", "0.001"),
    CUBIC_INCH("in3", "0.000016387064");

    private final String symbol;
    private final BigDecimal factor;

    VolumeUnit(String symbol, String factor) {
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
