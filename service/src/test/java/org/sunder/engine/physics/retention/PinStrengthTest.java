package org.sunder.engine.physics.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.physics.Setups;
import org.sunder.engine.physics.retention.PinStrength.MaterialShear;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.PressureUnit;

class PinStrengthTest {

    /**
     * Break loads in single shear on the root area, lbf, computed outside the project: 9600 psi moulded PA 6/6 (DuPont Zytel
     * design guide, from memory), 10 000 psi extruded PA 6/6 (ASTM D732 data).
     */
    @ParameterizedTest
    @CsvSource({
        "#2-56, 29.7, 31.0",
        "#4-40, 47.7, 49.7",
        "#6-32, 71.5, 74.5",
        "#8-32, 114.8, 119.6",
        "#10-24, 139.2, 145.0",
        "1/4-20, 258.2, 268.9",
    })
    void breakLoadIsShearStrengthOnTheRootArea(String symbol, double moulded, double extruded) {
        PinThread thread = PinThread.find(symbol).orElseThrow();
        assertThat(pounds(psi(9600).forceOfOne(thread))).isCloseTo(moulded, within(0.05 + 1e-3 * moulded));
        assertThat(pounds(psi(10_000).forceOfOne(thread))).isCloseTo(extruded, within(0.05 + 1e-3 * extruded));
    }

    /** Common practice, no source: one #2-56 nylon screw 30 to 35 lbf, three 90 to 105 lbf, one #4-40 about 50 lbf. */
    @Test
    void defaultStrengthAgreesWithCommonPractice() {
        MaterialShear nylon = MaterialShear.NYLON_66;
        assertThat(pounds(nylon.forceOfOne(PinThread.UNC_2_56))).isBetween(30.0, 35.0);
        assertThat(pounds(PinSet.ofNylon(PinThread.UNC_2_56, 3).force())).isBetween(90.0, 105.0);
        assertThat(pounds(nylon.forceOfOne(PinThread.UNC_4_40))).isCloseTo(50, within(2.0));
    }

    /** The default is the D732 value of 10 000 psi, rounded. */
    @Test
    void defaultStrengthIsTenThousandPsi() {
        double psi = MaterialShear.NYLON_66
                .strength()
                .valueIn(PressureUnit.POUND_PER_SQUARE_INCH)
                .doubleValue();
        assertThat(psi).isCloseTo(10_000, within(10.0));
    }

    @Test
    void scatterOfMeasuredPinsGrowsAsTheRootOfTheirCount() {
        MeasuredBatch known = new MeasuredBatch(Setups.newtons(200), Setups.newtons(10), 10_000);
        assertThat(known.sdOf(4, PinThread.M2_5)).isCloseTo(20, within(0.01));
        assertThat(known.sdOf(9, PinThread.M2_5)).isCloseTo(30, within(0.05));
    }

    /** Variance of n pins and of a mean of N: n·s² + n²·s²/N, elementary statistics. */
    @Test
    void aSmallBatchLeavesItsMeanUncertain() {
        MeasuredBatch small = new MeasuredBatch(Setups.newtons(200), Setups.newtons(10), 4);
        assertThat(small.sdOf(4, PinThread.M2_5)).isCloseTo(Math.sqrt(800), within(1e-9));
    }

    @Test
    void uncertaintyOfTheMaterialDoesNotAverageOut() {
        PinSet one = PinSet.ofNylon(PinThread.M3, 1);
        PinSet nine = PinSet.ofNylon(PinThread.M3, 9);
        assertThat(nine.sd() / nine.force()).isCloseTo(one.sd() / one.force(), within(1e-12));
        Retention together = Retention.ofPins(List.of(nine, nine), Fit.of(Setups.newtons(0)));
        assertThat(together.pinsSd()).isCloseTo(2 * nine.sd(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"15, 7.5", "4, 5", "0, 5"})
    void aGuessedFitIsUncertainByHalfAndAtLeastFiveNewtons(double force, double sd) {
        assertThat(Fit.of(Setups.newtons(force)).sd()).isEqualTo(sd);
    }

    private static MaterialShear psi(double value) {
        return new MaterialShear(new Pressure(BigDecimal.valueOf(value), PressureUnit.POUND_PER_SQUARE_INCH), 0.1);
    }

    private static double pounds(double newtons) {
        return Force.ofNewtons(newtons).valueIn(ForceUnit.POUND_FORCE).doubleValue();
    }
}
