package org.sunder.engine.learning.quadrature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The quick exponential against published values, and against the platform's own. */
class FastExpTest {

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 4.4. */
    @ParameterizedTest
    @CsvSource({"1, 2.718281828459045", "-1, 0.367879441171442", "0.5, 1.648721270700128", "10, 22026.4657948067"})
    void givesThePublishedValues(double x, double expected) {
        assertThat(FastExp.exp(x)).isCloseTo(expected, within(1e-12 * expected));
    }

    @Test
    void agreesWithThePlatformEverywhere() {
        for (double x = -699.9; x < 700; x += 0.0317) {
            double expected = StrictMath.exp(x);
            assertThat(FastExp.exp(x)).as("at " + x).isCloseTo(expected, within(1e-13 * expected));
        }
    }

    @Test
    void isNothingFarBelow() {
        assertThat(FastExp.exp(-701)).isZero();
        assertThat(FastExp.exp(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(FastExp.exp(0)).isEqualTo(1);
    }
}
