package org.sunder.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Factors against NIST SP 811 (2008) Appendix B, where they are exact by definition (from memory). */
class UnitFactorsTest {

    @ParameterizedTest
    @CsvSource({
        "lbf, 4.4482216152605",
        "psi, 6894.757293168",
        "in3, 0.000016387064",
        "lb, 0.45359237",
        "gr, 0.00006479891",
        "oz, 0.028349523125",
        "in, 0.0254",
        "ft, 0.3048",
        "ft/s, 0.3048",
        "g0, 9.80665",
        "bar, 100000",
        "kPa, 1000",
    })
    void factorsAreTheDefinedOnes(String symbol, BigDecimal defined) {
        Unit unit = every().filter(u -> u.symbol().equals(symbol)).findFirst().orElseThrow();
        assertThat(unit.factor().setScale(defined.scale(), RoundingMode.DOWN)).isEqualByComparingTo(defined);
    }

    @Test
    void footPoundPerPoundIsTheFootPoundOverThePound() {
        double footPound = 1.3558179483314; // J, NIST SP 811
        assertThat(SpecificEnergyUnit.FOOT_POUND_FORCE_PER_POUND.factor().doubleValue())
                .isCloseTo(footPound / 0.45359237, within(1e-12));
    }

    @Test
    void poundPerSquareInchTimesCubicInchIsItsJoule() {
        BigDecimal joule = PressureUnit.POUND_PER_SQUARE_INCH.factor().multiply(VolumeUnit.CUBIC_INCH.factor());
        assertThat(joule.doubleValue()).isCloseTo(0.1129848290276167, within(1e-16));
    }

    @ParameterizedTest
    @CsvSource({"0, 273.15", "100, 373.15", "-273.15, 0"})
    void celsiusStartsAtTheIcePoint(BigDecimal celsius, double kelvins) {
        assertThat(new Temperature(celsius, TemperatureUnit.DEGREE_CELSIUS).kelvins())
                .isEqualTo(kelvins);
    }

    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40"})
    void fahrenheitMeetsCelsiusAtItsFixedPoints(BigDecimal fahrenheit, BigDecimal celsius) {
        Temperature t = new Temperature(fahrenheit, TemperatureUnit.DEGREE_FAHRENHEIT);
        assertThat(t.rounded(TemperatureUnit.DEGREE_CELSIUS, 12)).isEqualByComparingTo(celsius);
    }

    @Test
    void symbolsAreUnique() {
        List<String> symbols = every().map(Unit::symbol).toList();
        assertThat(symbols).doesNotHaveDuplicates();
    }

    /** F = p·πD²/4 at 15 psi, computed by hand in pounds. */
    @ParameterizedTest
    @CsvSource({"3, 106.03", "4, 188.50", "5.5, 356.37", "6, 424.12"})
    void fifteenPsiOnABulkheadGivesItsPounds(BigDecimal inches, double pounds) {
        double d = new Length(inches, LengthUnit.INCH).metres();
        double p = new Pressure(BigDecimal.valueOf(15), PressureUnit.POUND_PER_SQUARE_INCH).pascals();
        Force force = Force.ofNewtons(p * Math.PI / 4 * d * d);
        assertThat(force.valueIn(ForceUnit.POUND_FORCE).doubleValue()).isCloseTo(pounds, within(1e-4 * pounds));
    }

    @ParameterizedTest
    @MethodSource("every")
    void whatWasWrittenComesBackThroughSi(Unit unit) {
        BigDecimal written = new BigDecimal("12.3456789");
        Quantity<Unit> quantity = new Written(written, unit);
        BigDecimal si = quantity.exactSi();
        BigDecimal back = quantity.valueIn(unit);
        assertThat(back.subtract(written).abs()).isLessThan(new BigDecimal("1e-28"));
        assertThat(si.signum()).isPositive();
    }

    @Test
    void aHostileExponentIsComputedWithoutBeingWrittenOut() {
        Mass mass = new Mass(new BigDecimal("1e999999999"), MassUnit.GRAM);
        assertThat(mass.kilograms()).isInfinite();
        Mass huge = new Mass(new BigDecimal("1e900000000"), MassUnit.GRAM);
        assertThat(huge.rounded(MassUnit.GRAM, 3).precision()).isLessThan(40);
    }

    static Stream<Unit> every() {
        return Stream.of(
                        AccelerationUnit.values(),
                        ForceUnit.values(),
                        LengthUnit.values(),
                        MassUnit.values(),
                        PressureUnit.values(),
                        SpecificEnergyUnit.values(),
                        SpeedUnit.values(),
                        TemperatureUnit.values(),
                        VolumeUnit.values())
                .flatMap(Arrays::stream);
    }

    private record Written(BigDecimal value, Unit unit) implements Quantity<Unit> {}
}
