package org.sunder.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityRoundingTest {

    /** One grain is 64.79891 mg, one pound 7000 grains: defined. */
    @ParameterizedTest
    @CsvSource({"1, lb, gr, 7, 7000", "7000, gr, g, 8, 453.59237", "1, gr, g, 7, 0.06479891", "16, oz, lb, 5, 1"})
    void massesConvertExactly(BigDecimal value, String from, String to, int digits, String expected) {
        assertThat(new Mass(value, mass(from)).rounded(mass(to), digits).toPlainString())
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"1250, 2, 1200", "1350, 2, 1400", "0.012345, 3, 0.0123", "100, 1, 100", "2.50, 5, 2.5"})
    void roundsHalfToEvenWithoutTrailingZeros(BigDecimal value, int digits, String expected) {
        Length length = new Length(value, LengthUnit.MILLIMETRE);
        assertThat(length.rounded(LengthUnit.MILLIMETRE, digits)).hasToString(expected);
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void inchesAndBackKeepEveryDigit(BigDecimal millimetres) {
        Length inches =
                new Length(new Length(millimetres, LengthUnit.MILLIMETRE).valueIn(LengthUnit.INCH), LengthUnit.INCH);
        assertThat(inches.rounded(LengthUnit.MILLIMETRE, 20)).isEqualByComparingTo(millimetres);
    }

    static Stream<BigDecimal> lengths() {
        Random random = new Random(20260501);
        return Stream.generate(() -> BigDecimal.valueOf(1 + random.nextInt(9_999_999), random.nextInt(6)))
                .limit(100);
    }

    private static MassUnit mass(String symbol) {
        return Stream.of(MassUnit.values())
                .filter(u -> u.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
