package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Exact binomial limits against beta quantiles (scipy) and published tables: NIST/SEMATECH e-Handbook 7.2.4.2 (4 of
 * 20); commonly tabulated success runs, e.g. C. Lipson, N. J. Sheth, Statistical Design and Analysis of Engineering
 * Experiments, 1973.
 */
class TestsAloneTest {

    @ParameterizedTest
    @CsvSource({
        "4, 20, 0.90, 0.071354, 0.401028", "0, 10, 0.95, 0, 0.308497", "1, 10, 0.95, 0.002529, 0.445016",
        "5, 10, 0.95, 0.187086, 0.812914", "9, 10, 0.95, 0.554984, 0.997471", "10, 10, 0.95, 0.691503, 1",
        "3, 3, 0.95, 0.292402, 1", "3, 3, 0.90, 0.368403, 1", "2, 3, 0.95, 0.094299, 0.991596",
        "5, 6, 0.95, 0.358765, 0.995789", "58, 59, 0.90, 0.922102, 0.999131"
    })
    void twoSidedLimitsAreTheBetaQuantiles(int separated, int counted, double level, double low, double high) {
        double confidence = (1 + level) / 2;
        assertThat(TestsAlone.lowerBound(separated, counted, confidence)).isCloseTo(low, within(1e-6));
        assertThat(TestsAlone.upperBound(separated, counted, confidence)).isCloseTo(high, within(1e-6));
    }

    /** One-sided 97.5 % limits for n = 5, printed with the R package ExactCIone. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.005050763", "2, 0.052744951", "3, 0.146632800", "4, 0.283582064", "5, 0.478176250"})
    void lowerLimitsOfFiveAreThePublished(int separated, double expected) {
        assertThat(TestsAlone.of(separated, 5, 0.975).lowerBound()).isCloseTo(expected, within(1e-8));
    }

    @ParameterizedTest
    @CsvSource({
        "0.90, 0.90, 22",
        "0.90, 0.95, 29",
        "0.90, 0.99, 44",
        "0.95, 0.90, 45",
        "0.95, 0.95, 59",
        "0.95, 0.99, 90",
        "0.99, 0.90, 230",
        "0.99, 0.95, 299",
        "0.99, 0.99, 459"
    })
    void successRunsAreTheTabulated(double reliability, double confidence, int expected) {
        assertThat(TestsAlone.successRun(reliability, confidence)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0.50, 0.500000", "1, 0.95, 0.050000", "2, 0.80, 0.447214", "3, 0.95, 0.368403", "5, 0.90, 0.630957",
        "10, 0.95, 0.741134", "22, 0.90, 0.900628", "29, 0.95, 0.901855", "45, 0.90, 0.950119", "59, 0.95, 0.950492"
    })
    void runWithoutFailureShowsTheTabulatedReliability(int counted, double confidence, double expected) {
        assertThat(TestsAlone.of(counted, counted, confidence).lowerBound()).isCloseTo(expected, within(1e-6));
    }
}
