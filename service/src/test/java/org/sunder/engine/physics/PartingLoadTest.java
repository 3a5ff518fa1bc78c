package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.PartingLoad;
import org.sunder.engine.quantity.Speed;

/**
 * What a measured separation asked of harness and bulkheads, against D. Halliday, R. Resnick, J. Walker, Fundamentals of Physics, 10th
 * ed.: work and kinetic energy (ch. 7), the two-body energy about the centre of mass (ch. 9), adiabatic expansion pVᵞ = const (ch. 19).
 */
class PartingLoadTest {

    private static final double AIR = 101_325; // Pa
    private static final double GAMMA = 1.2;

    /** 0.9 kg forward and 4.1 kg aft leave each other at 10 m/s: 8.2 m/s and 1.8 m/s about their centre of mass. */
    @Test
    void theHarnessTakesTheEnergyOfBothPartsAboutTheirCentreOfMass() {
        PartingLoad load =
                PartingLoad.of(JointPhysics.of(Setups.bittern()), 10, 0.001).orElseThrow();
        assertThat(load.energy()).isCloseTo(0.9 * 8.2 * 8.2 / 2 + 4.1 * 1.8 * 1.8 / 2, within(1e-9));
        assertThat(load.energy()).isCloseTo(36.9, within(1e-9));
    }

    /** The expansion step by step: 100,000 slices of the stroke, each of pressure times area less air and friction. */
    @Test
    void thePressureIsTheOneThatTheGasNeedsForThatSpeed() {
        JointPhysics joint = JointPhysics.of(Setups.bittern());
        double gauge = 150_000;
        double volume = joint.freeVolume();
        double stroke = 0.045;
        int slices = 100_000;
        double work = 0;
        for (int i = 0; i < slices; i++) {
            double at = (i + 0.5) * stroke / slices;
            double pressure = (AIR + gauge) * Math.pow(volume / (volume + joint.area() * at), GAMMA);
            work += ((pressure - AIR) * joint.area() - 15) * stroke / slices;
        }
        double speed = Math.sqrt(2 * work / (0.9 * 4.1 / 5.0));
        PartingLoad load = PartingLoad.of(joint, speed, 0.001).orElseThrow();
        assertThat(load.leastPressure()).isCloseTo(gauge, within(1.0));
        assertThat(load.bulkheadForce()).isCloseTo(gauge * Math.PI / 4 * 0.092 * 0.092, within(0.1));
        double charge = joint.handbookCharge() * gauge / joint.thresholdPressure();
        assertThat(PartingLoad.of(joint, speed, charge).orElseThrow().predicted())
                .isCloseTo(speed, within(1e-4));
    }

    @Test
    void theLimitThatWasStatedIsHeldAgainstItOnEitherSide() {
        Limit pressure = new Limit.GaugePressureLimit(Setups.kPa(300));
        JointPhysics joint = JointPhysics.of(Setups.bittern().withLimit(pressure));
        double most = joint.separationSpeed(joint.ceiling().chargeKg()).orElseThrow();
        assertThat(exceeded(joint, 0.999 * most)).isNull();
        assertThat(exceeded(joint, most))
                .as("the limit itself is none too much")
                .isNull();
        assertThat(exceeded(joint, 1.001 * most)).isEqualTo(pressure);
        Limit speed = new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(12));
        JointPhysics slow = JointPhysics.of(Setups.bittern().withLimit(speed));
        assertThat(exceeded(slow, 12)).isNull();
        assertThat(exceeded(slow, 12.01)).isEqualTo(speed);
        assertThat(exceeded(JointPhysics.of(Setups.bittern().withLimit(null)), 100))
                .isNull();
    }

    private static Limit exceeded(JointPhysics joint, double speed) {
        return PartingLoad.of(joint, speed, 0.001).orElseThrow().exceeded();
    }

    @Test
    void withoutMassesNothingIsKnown() {
        assertThat(PartingLoad.of(JointPhysics.of(Setups.tube(98, 300, 100)), 10, 0.001))
                .isEmpty();
    }
}
