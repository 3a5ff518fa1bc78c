package org.sunder.engine.quantity;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The bound on every number that comes in, in digits and in exponent. Beyond it nothing is measured, and writing it out may
 * fill the memory: {@code 1E999999999} has a thousand million digits.
 */
public final class Decimals {

    /** What is allowed, for people. */
    public static final String ALLOWED = "up to 20 digits, below 1e12";

    private static final int MOST_DIGITS = 20;
    private static final int LARGEST_EXPONENT = 12;
    private static final int LONGEST = 48;

    private Decimals() {}

    /** Whether a number may be written out and computed with. */
    public static boolean bounded(BigDecimal value) {
        return value.precision() <= MOST_DIGITS
                && value.scale() <= MOST_DIGITS
                && (long) value.precision() - value.scale() <= LARGEST_EXPONENT;
    }

    /** The number that a text is; empty where it is none, or beyond the bound. */
    public static Optional<BigDecimal> find(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            return Optional.of(new BigDecimal(text)).filter(Decimals::bounded);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
