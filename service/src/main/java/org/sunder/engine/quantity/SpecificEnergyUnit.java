package org.sunder.engine.quantity;

import java.math.BigDecimal;

/** Units of specific energy (powder force); factors to joules per kilogram: defined values, NIST SP 811 (2008) Appendix B. */
public enum SpecificEnergyUnit implements Unit {
    JOULE_PER_KILOGRAM("J/kg", "1"),
    KILOJOULE_PER_KILOGRAM("kJ/kg", "1000"),
    FOOT_POUND_FORCE_PER_POUND("ft.lbf/lb", "2.98906692");

    private final String symbol;
    private final BigDecimal factor;

    SpecificEnergyUnit(String symbol, String factor) {
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
