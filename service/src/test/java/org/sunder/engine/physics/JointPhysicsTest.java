package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.charge.CeilingSource;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.LogUncertainty;
import org.sunder.engine.physics.charge.Separation;
import org.sunder.engine.quantity.Speed;

class JointPhysicsTest {

    /** Worked by hand from the published formulas. */
    @Test
    void worksTheBitternsNoseAsByHand() {
        JointPhysics joint = JointPhysics.of(Setups.bittern());
        assertThat(joint.volume().cavity() * 1000).isCloseTo(2.200, within(0.0005));
        assertThat(joint.volume().contents().get(0).volume() * 1000).isCloseTo(0.298, within(0.0005));
        double fabric = joint.volume().contents().get(1).volume()
                + joint.volume().contents().get(2).volume();
        assertThat(fabric * 1000).isCloseTo(0.382, within(0.0005));
        assertThat(joint.freeVolume() * 1000).isCloseTo(1.520, within(0.0005));
        assertThat(joint.area() * 1e6).isCloseTo(6647.6, within(0.05));
        assertThat(joint.retention().pins() / 3).isCloseTo(205.6, within(0.05));
        assertThat(joint.retention().mean()).isCloseTo(631.9, within(0.1));
        assertThat(joint.thresholdPressure() / 1000).isCloseTo(95.1, within(0.06));
        assertThat(joint.handbookCharge() * 1000).isCloseTo(0.660, within(0.0005));
        assertThat(joint.ceiling().chargeKg() * 1000).isCloseTo(2.08, within(0.005));
        assertThat(joint.ceiling().source()).hasToString("structural-limit");
    }

    @Test
    void handbookChargeMakesTheThresholdPressure() {
        JointPhysics joint = JointPhysics.of(Setups.bittern());
        assertThat(joint.gaugePressure(joint.handbookCharge())).isCloseTo(joint.thresholdPressure(), within(1e-6));
    }

    @Test
    void withoutALimitTheCeilingIsThreeTimesTheThresholdAndSaysSo() {
        JointPhysics joint = JointPhysics.of(Setups.bittern().withLimit(null));
        assertThat(joint.ceiling().chargeKg()).isCloseTo(3 * joint.handbookCharge(), within(1e-12));
        assertThat(joint.ceiling().source()).hasToString("default");
        assertThat(joint.warnings()).extracting(Warning::code).contains("no-structural-limit", "default-ceiling");
    }

    @Test
    void aSpeedLimitBecomesTheChargeThatGivesThatSpeed() {
        Limit limit = new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(12));
        JointPhysics joint = JointPhysics.of(Setups.bittern().withLimit(limit));
        assertThat(joint.ceiling().source()).hasToString("separation-speed");
        assertThat(joint.separationSpeed(joint.ceiling().chargeKg()).orElseThrow())
                .isCloseTo(12, within(1e-9));
    }

    @Test
    void noCeilingLeavesTheModelsDomain() {
        Limit limit = new Limit.GaugePressureLimit(Setups.kPa(4000));
        JointPhysics joint = JointPhysics.of(Setups.bittern().withLimit(limit));
        assertThat(joint.ceiling().source()).isEqualTo(CeilingSource.MODEL_DOMAIN);
        assertThat(joint.gaugePressure(joint.ceiling().chargeKg())).isCloseTo(1e6, within(1e-3));
    }

    /** Small stroke: the work is (p₀ − p_a)·A·s − F·s, elementary mechanics. */
    @Test
    void speedOfAShortStrokeIsThatOfAConstantPressure() {
        Separation short1 = new Separation(1e-3, 5e-3, 1e-5, 20, 0.8, 219_048, 101_325, 101_325);
        double gauge = 0.0005 * 219_048 / 1e-3;
        double expected = Math.sqrt(2 * (gauge * 5e-3 - 20) * 1e-5 / 0.8);
        assertThat(short1.speed(0.0005)).isCloseTo(expected, within(1e-3 * expected));
    }

    @Test
    void withoutMassesThereIsNoSpeed() {
        assertThat(JointPhysics.of(Setups.tube(98, 300, 100)).separationSpeed(0.001))
                .isEmpty();
    }

    @Test
    void uncertaintyIsTheRootSumSquareOfItsParts() {
        LogUncertainty u = JointPhysics.of(Setups.bittern()).uncertainty();
        assertThat(u.pins()).isCloseTo(0.1 * 616.9 / 631.9, within(1e-4));
        assertThat(u.fit()).isCloseTo(7.5 / 631.9, within(1e-4));
        assertThat(u.powder()).isEqualTo(0.05);
        assertThat(new LogUncertainty(0.3, 0.4, 0, 0).total()).isCloseTo(0.5, within(1e-15));
    }

    @Test
    void aShoulderUnderOneCalibreIsWarnedOf() {
        assertThat(JointPhysics.of(Setups.bittern()).warnings())
                .extracting(Warning::code)
                .contains("short-shoulder", "guessed-fit", "handbook-pin-strength")
                .doesNotContain("no-structural-limit");
    }

    @Test
    void aCeilingBelowTheHandbookChargeIsWarnedOf() {
        Limit limit = new Limit.GaugePressureLimit(Setups.kPa(50));
        assertThat(JointPhysics.of(Setups.bittern().withLimit(limit)).warnings())
                .extracting(Warning::code)
                .contains("ceiling-below-handbook");
    }

    @Test
    void frictionAloneIsEnoughToComputeAndIsWarnedOf() {
        assertThat(JointPhysics.of(Setups.bittern().withPins(List.of())).warnings())
                .extracting(Warning::code)
                .contains("no-pins");
    }

    /** Volume 0.05 L, stroke 0.2 L: the gas, at p_a + p* at first, falls under p_a long before the end. */
    @Test
    void gasThatIsSpentBeforeTheShoulderIsOutIsWarnedOf() {
        JointSetup tube = Setups.tube(50, 25, 60);
        JointSetup longShoulder = new JointSetup(
                tube.innerDiameter(),
                tube.cavity(),
                tube.contents(),
                tube.pins(),
                tube.fit(),
                tube.powder(),
                Setups.mm(100),
                Setups.grams(500),
                Setups.grams(500),
                null);
        assertThat(JointPhysics.of(longShoulder).warnings())
                .extracting(Warning::code)
                .contains("too-little-work");
        assertThat(JointPhysics.of(Setups.bittern()).warnings())
                .extracting(Warning::code)
                .doesNotContain("too-little-work");
    }

    @Test
    void aJointUnlikeItsCavityIsAskedAbout() {
        JointSetup tube = Setups.tube(98, 300, 100);
        JointSetup typo = new JointSetup(
                Setups.mm(68), tube.cavity(), List.of(), List.of(), tube.fit(), tube.powder(), null, null, null, null);
        assertThat(JointPhysics.of(typo).warnings()).extracting(Warning::code).contains("area-unlike-cavity");
        assertThat(JointPhysics.of(tube).warnings()).extracting(Warning::code).doesNotContain("area-unlike-cavity");
    }
}
