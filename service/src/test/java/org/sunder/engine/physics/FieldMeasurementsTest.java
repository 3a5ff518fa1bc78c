package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.MeasuredSpeed;
import org.sunder.engine.physics.flight.DrillSize;
import org.sunder.engine.physics.flight.DrillSizes;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.physics.retention.PullTests;
import org.sunder.engine.physics.retention.ShoulderCheck;
import org.sunder.engine.quantity.Force;

/** What a flyer measures: pulled pins, speeds, shoulders. Expected values are elementary mechanics and statistics. */
class FieldMeasurementsTest {

    /** 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squares 32, the usual classroom sample; here in tens of newtons. */
    @Test
    void pullTestsGiveTheSampleMeanAndDeviation() {
        List<Force> pulls = DoubleStream.of(20, 40, 40, 40, 50, 50, 70, 90)
                .mapToObj(Setups::newtons)
                .toList();
        MeasuredBatch batch = PullTests.batch(pulls);
        assertThat(batch.mean().newtons()).isCloseTo(50, within(1e-12));
        assertThat(batch.standardDeviation().newtons()).isCloseTo(10 * Math.sqrt(32 / 7.0), within(1e-12));
        assertThat(batch.tests()).isEqualTo(8);
    }

    @Test
    void onePullIsNoBatch() {
        assertThatThrownBy(() -> PullTests.batch(List.of(newtons(200)))).isInstanceOf(UnsoundSetupException.class);
    }

    @Test
    void aMetreInTwentyFourFramesAtTwoHundredFortyIsTenMetresPerSecond() {
        MeasuredSpeed measured = MeasuredSpeed.ofFrames(mm(1000), 24, 240);
        assertThat(measured.speed()).isCloseTo(10, within(1e-12));
        assertThat(measured.sd()).isBetween(0.5, 0.6);
        assertThat(MeasuredSpeed.ofFrames(mm(1000), 1, 10).sd())
                .as("one frame is hardly a measurement")
                .isGreaterThan(0.4 * 10);
    }

    /** A fall of 1.225 83125 m takes half a second in standard gravity. */
    @Test
    void aThrowGoesAsFarAsItsFallLasts() {
        MeasuredSpeed measured = MeasuredSpeed.ofThrow(mm(4000), mm(9806.65 / 8));
        assertThat(measured.speed()).isCloseTo(8, within(1e-9));
        // Lengths to 5 %, the height under a root; level to 0.035, which at 8 m/s adds 0.0286 s to the half second or
        // takes it away.
        assertThat(measured.sd())
                .isCloseTo(8 * Math.hypot(0.05 * Math.sqrt(1.25), 0.035 * 8 / 9.80665 / 0.5), within(1e-9));
        assertThat(measured.percent()).isEqualByComparingTo("8.0");
    }

    /** Energy in the frame of the common centre of mass. */
    @Test
    void harnessTakesTheEnergyOfTheParting() {
        HarnessShock shock = HarnessShock.of(10, grams(1000), grams(4000), mm(500));
        assertThat(shock.energy()).isCloseTo(1.0 * 64 / 2 + 4.0 * 4 / 2, within(1e-12));
        assertThat(shock.peakLoad() * 0.5 / 2).isCloseTo(shock.energy(), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"98, 0, 0, true", "97, 3, 3, true", "97, 2, 3, false", "40, 3, 4, false", "40, 4, 4, true"})
    void aShoulderUnderOneCalibreNeedsPins(double shoulder, int pins, int needed, boolean steady) {
        ShoulderCheck check = ShoulderCheck.of(mm(98), mm(shoulder), pins);
        assertThat(check.pinsToSteady()).isEqualTo(needed);
        assertThat(check.steady()).isEqualTo(steady);
    }

    /** Nominal sizes that any shop's chart shows. */
    @ParameterizedTest
    @CsvSource({
        "0.0032639, #30, 3.3 mm, 1/8 in",
        "0.0024, '3/32 in', '#42', '2.4 mm'",
        "0.0254, '1 in', '#1', '25.0 mm'"
    })
    void nearestDrillsAreFoundInEverySeries(double diameter, String a, String b, String c) {
        assertThat(DrillSizes.nearest(diameter)).extracting(DrillSize::name).containsExactlyInAnyOrder(a, b, c);
    }
}
