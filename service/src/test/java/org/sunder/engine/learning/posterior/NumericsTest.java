package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.quadrature.FastNormal;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Grid;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/** The numerical parts against closed forms and tables. */
class NumericsTest {

    /** Normal tail areas, M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, tables 26.1 and 26.2. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "1, 0.841344746068543",
        "2, 0.977249868051821",
        "-1, 0.158655253931457",
        "-3, 1.349898031630095e-3",
        "-5, 2.866515718791939e-7",
        "-10, 7.619853024160527e-24"
    })
    void normalTableIsTheTabulatedDistribution(double z, double expected) {
        assertThat(FastNormal.cdf(z) / expected).isCloseTo(1, within(1e-6));
        assertThat(FastNormal.cdf(z)).isCloseTo(expected, within(1e-10));
    }

    @Test
    void normalTableEndsQuietly() {
        assertThat(FastNormal.cdf(-1e9)).isZero();
        assertThat(FastNormal.cdf(1e9)).isCloseTo(1, within(1e-15));
    }

    /** A Gaussian smoothed by a Gaussian is the Gaussian of the sum of variances. */
    @ParameterizedTest
    @ValueSource(doubles = {0.03, 0.06, 0.12, 0.25, 0.4, 0.7})
    void smoothedGaussianIsTheWiderGaussian(double sd) {
        Grid grid = Grid.symmetric(0.025, 192);
        double[] values = new double[grid.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = gaussian(grid.node(i), 0.1);
        }
        double[] smooth = GaussianKernel.of(sd, grid).density(values);
        double total = StrictMath.hypot(0.1, sd);
        for (int i = 0; i < values.length; i++) {
            double expected = gaussian(grid.node(i), total);
            assertThat(smooth[i]).isCloseTo(expected, within(2e-3 * gaussian(0, total)));
        }
    }

    private static double gaussian(double x, double sd) {
        return StrictMath.exp(-0.5 * (x / sd) * (x / sd)) / (sd * StrictMath.sqrt(2 * Math.PI));
    }

    /** A half-normal variable has mean √(2/π), mean square 1. */
    @Test
    void rulesOfTheHalfNormalHaveItsMoments() {
        for (var rule : List.of(
                QuadratureRules.halfNormalGauss2(),
                QuadratureRules.halfNormalGauss3(),
                QuadratureRules.halfNormalGauss4())) {
            assertThat(rule.stream().mapToDouble(n -> n.weight() * n.value()).sum())
                    .isCloseTo(StrictMath.sqrt(2 / Math.PI), within(1e-12));
            assertThat(rule.stream()
                            .mapToDouble(n -> n.weight() * n.value() * n.value())
                            .sum())
                    .isCloseTo(1, within(1e-12));
        }
    }
}
