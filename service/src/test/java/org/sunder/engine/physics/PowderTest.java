package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.Powder;

/** The trade's constants, its short rule and the measurements of Noble & Abel must agree as stated. */
class PowderTest {

    private static final double LAMBDA = Powder.FINE_BLACK_POWDER.force().joulesPerKilogram() / 1000; // J/g
    private static final double PSI_CUBIC_INCH = 0.1129848290276167; // J, NIST SP 811
    private static final double MOLAR_GAS = 8.314462618; // J/(mol K), CODATA 2018
    private static final double MOLAR_VOLUME = 22_413.97; // cm3/mol at 0 degC and 1 atm, CODATA

    @Test
    void powderForceIsTheTradesGasConstantTimesItsTemperature() {
        assertThat(LAMBDA).isCloseTo(219.048, within(1e-4 * 219));
    }

    /** T. L. Davis, The Chemistry of Powder and Explosives, p. 43: 271.3 cm³/g of permanent gas. */
    @Test
    void davissGasIsWhatItsMolesSay() {
        assertThat(271.3 / MOLAR_VOLUME).isCloseTo(0.012104, within(1.2e-5));
        double neededGas = LAMBDA / (MOLAR_GAS * 3307 / 1.8) * MOLAR_VOLUME;
        assertThat(neededGas).isCloseTo(321.4, within(0.1));
    }

    /** Noble & Abel 1875, 280 cm³/g at 2200 °C (from memory): 256.9 J/g; on Davis's gas at 2231 °C 252.0 J/g. */
    @Test
    void nobleAndAbelGiveAFifthMoreBeforeHeatLoss() {
        double nobleAbel = 280 / MOLAR_VOLUME * MOLAR_GAS * 2473.15;
        assertThat(nobleAbel).isCloseTo(256.9, within(0.26));
        double davis = 271.3 / MOLAR_VOLUME * MOLAR_GAS * 2504.15;
        assertThat(LAMBDA / davis).isCloseTo(0.869, within(1e-3));
        assertThat(LAMBDA / nobleAbel).isBetween(0.83, 0.87);
    }

    /** Common practice: grams = 0.006·D²·L at 15 psi, inches. */
    @Test
    void shortRuleIsWithinTwoPercentOfTheFormula() {
        double rule = 15 * PSI_CUBIC_INCH * Math.PI / 4 / 0.006;
        assertThat(rule).isCloseTo(221.845, within(0.022));
        assertThat(rule / LAMBDA).isCloseTo(1.0128, within(2e-3));
    }

    /** At a stated pressure in psi, grams per D²·L (in³): the formula with 454 g to the pound. */
    @ParameterizedTest
    @CsvSource({"15, 0.0060821", "10, 0.0040547", "12, 0.0048657", "20, 0.0081094"})
    void gramsPerDiameterSquaredAndLength(double psi, double k) {
        double exactPound = psi * PSI_CUBIC_INCH * Math.PI / 4 / LAMBDA;
        assertThat(exactPound * 454 / 453.59237).isCloseTo(k, within(1e-4 * k));
    }

    /** Worked lines at 15 psi with RT = 219.048 J/g, computed outside the project. */
    @ParameterizedTest
    @CsvSource({"4, 12, 1.16671", "3, 10, 0.546895", "6, 18, 3.93765", "2.56, 8, 0.318590"})
    void worksTheTradesExamples(double diameter, double length, double grams) {
        double area = Math.PI / 4 * diameter * diameter * 0.0254 * 0.0254;
        double force = 15 * 6894.757293168 * area;
        JointPhysics joint = JointPhysics.of(Setups.tube(diameter * 25.4, length * 25.4, force));
        assertThat(joint.handbookCharge() * 1000).isCloseTo(grams, within(1e-5 * grams));
        assertThat(joint.thresholdPressure() / 6894.757293168).isCloseTo(15, within(1e-9));
    }

    /** Sanity line: one gram in one litre gives 31.77 psi. */
    @Test
    void oneGramInOneLitreGivesThirtyTwoPsi() {
        double diameter = 100;
        double length = 1e6 / (Math.PI / 4 * diameter * diameter);
        JointPhysics joint = JointPhysics.of(Setups.tube(diameter, length, 100));
        assertThat(joint.gaugePressure(0.001) / 6894.757293168).isCloseTo(31.77, within(0.005));
    }
}
