package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of temperature; factors to kelvins: defined values, NIST SP 811 (2008) Appendix B. */
public enum TemperatureUnit implements Unit {
    DEGREE_CELSIUS("degC", "273.15", "1"),
    DEGREE_FAHRENHEIT("degF", "459.67", "0.5555555555555555555555555555555556");

    private final String symbol;
    private final BigDecimal offset;
    private final BigDecimal factor;

    TemperatureUnit(String symbol, String offset, String factor) {
        this.symbol = symbol;
        this.offset = new BigDecimal(offset);
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
    public BigDecimal offset() {
        return offset;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
