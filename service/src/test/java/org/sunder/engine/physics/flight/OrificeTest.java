package org.sunder.engine.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** F. M. White, Fluid Mechanics, 8th ed., problems 3.27 and 4.23; ISO 5167; values computed outside the project. */
class OrificeTest {

    private static final double T0 = 288.15;
    private static final double R = StandardAtmosphere.GAS_CONSTANT;

    @ParameterizedTest
    @CsvSource({
        "1.4, 0.684731, 0.528282",
        "1.3, 0.667262, 0.545728",
        "1.25, 0.658065, 0.554929",
        "1.2, 0.648531, 0.564474",
        "1.6666666666666667, 0.726184, 0.487139",
    })
    void chokedFactorAndCriticalRatioAreThoseOfGasDynamics(double gamma, double factor, double ratio) {
        assertThat(Orifice.chokedFactor(gamma)).isCloseTo(factor, within(1e-6));
        assertThat(Orifice.criticalRatio(gamma)).isCloseTo(ratio, within(1e-6));
    }

    /** ṁ√T₀/(p₀A) of air; White gives "α about 0.685". */
    @Test
    void chokedAirPassesItsConstant() {
        double flow = new Orifice(1e-4, 1).airFlow(5e5, T0, 1e5);
        assertThat(flow * Math.sqrt(T0) / (5e5 * 1e-4)).isCloseTo(0.040415, within(4e-7));
        assertThat(new Orifice(0.65e-4, 1).airFlow(7e5, 293.15, 1e5)).isCloseTo(0.1074, within(1.1e-4));
    }

    /** 1/4 in, C_d 0.6, air; the first by the cancellation-free form, recomputed in two ways outside the project. */
    @ParameterizedTest
    @CsvSource({
        "101425, 2.974104e-4",
        "120000, 4.03776e-3",
        "150000, 6.45153e-3",
        "191800, 8.67695e-3",
        "300000, 1.357188e-2",
    })
    void aQuarterInchHolePassesItsFlow(double upstream, double flow) {
        assertThat(Orifice.ofHoles(1, 0.00635).airFlow(upstream, T0, 101_325)).isCloseTo(flow, within(1e-5 * flow));
    }

    /** The incompressible form with upstream density passes too much, by so many per cent. */
    @ParameterizedTest
    @CsvSource({"101425, 0.05, 0.006", "120000, 9.5, 0.06", "150000, 23.7, 0.06"})
    void incompressibleFlowOverestimates(double upstream, double percent, double tolerance) {
        Orifice hole = Orifice.ofHoles(1, 0.00635);
        double over = incompressible(hole, upstream, 101_325) / hole.airFlow(upstream, T0, 101_325) - 1;
        assertThat(100 * over).isCloseTo(percent, within(tolerance));
    }

    /** Expansibility of the isentropic nozzle, ISO 5167-3, and of the orifice plate, ISO 5167-2, β = 0 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.98, 0.989228, 0.994971",
        "0.95, 0.972847, 0.987373",
        "0.9, 0.944920, 0.974554",
        "0.75, 0.855818, 0.934802"
    })
    void expansibilityIsThatOfTheNozzleAndBelowThatOfThePlate(double ratio, double nozzle, double plate) {
        Orifice hole = new Orifice(1e-5, 1);
        double epsilon = hole.airFlow(2e5, T0, ratio * 2e5) / incompressible(hole, 2e5, ratio * 2e5);
        assertThat(epsilon).isCloseTo(nozzle, within(1e-6)).isLessThan(plate);
    }

    /** White 4.23, 3.27(b): isothermal blow-down, density falls by a quarter after ln(4/3)/0.685 · V/(A√(RT)). */
    @Test
    void densityFallsByAQuarterAfterWhitesTime() {
        double unit = 1 / (1e-4 * Math.sqrt(R * T0));
        assertThat(isothermal(1e6, 7.5e5) / unit).isCloseTo(0.420, within(2e-3 * 0.42));
    }

    /** V 1 m³, A 1 cm², C_d 1, 288.15 K, choked: closed forms confirmed by integration outside the project. */
    @ParameterizedTest
    @CsvSource({"5e5, 35.1978, 26.4281", "2e5, 81.7266, 65.6324"})
    void aVesselBlowsDownInItsClosedFormTime(double to, double isothermal, double adiabatic) {
        assertThat(isothermal(1e6, to)).isCloseTo(isothermal, within(1e-5 * isothermal));
        assertThat(adiabatic(1e6, to)).isCloseTo(adiabatic, within(1e-5 * adiabatic));
    }

    @Test
    void equalPressuresPassNothing() {
        assertThat(Orifice.ofHoles(3, 0.003).airFlow(101_325, T0, 101_325)).isZero();
    }

    private static double incompressible(Orifice hole, double upstream, double back) {
        return hole.discharge() * hole.area() * Math.sqrt(2 * upstream / (R * T0) * (upstream - back));
    }

    private static double isothermal(double from, double to) {
        Orifice hole = new Orifice(1e-4, 1);
        return integrate(p -> 1 / (R * T0) / hole.airFlow(p, T0, 1), to, from);
    }

    private static double adiabatic(double from, double to) {
        Orifice hole = new Orifice(1e-4, 1);
        return integrate(
                p -> {
                    double t = T0 * Math.pow(p / from, 0.4 / 1.4);
                    return 1 / (1.4 * R * t) / hole.airFlow(p, t, 1);
                },
                to,
                from);
    }

    private static double integrate(DoubleUnaryOperator f, double from, double to) {
        double half = (to - from) / 2;
        return half * new GaussIntegratorFactory().legendre(60).integrate(t -> f.applyAsDouble(from + half * (1 + t)));
    }
}
