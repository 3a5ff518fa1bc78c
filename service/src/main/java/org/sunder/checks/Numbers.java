package org.sunder.checks;

import java.math.BigDecimal;
import java.math.MathContext;

/** Plain numbers of answers. */
final class Numbers {

    private static final MathContext DIGITS = new MathContext(4);

    private Numbers() {}

    /** To four significant digits. */
    static BigDecimal digits(double value) {
        return BigDecimal.valueOf(value).round(DIGITS);
    }
}
