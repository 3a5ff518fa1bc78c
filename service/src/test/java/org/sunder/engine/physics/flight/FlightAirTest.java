package org.sunder.engine.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.bittern;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.flight.FlightCase.Climb;
import org.sunder.engine.physics.flight.FlightCase.Vent;
import org.sunder.engine.quantity.Speed;

class FlightAirTest {

    private final JointPhysics joint = JointPhysics.of(bittern());

    /** (300 kPa − 31.204 kPa)·V/λ, with the standard atmosphere's 70121.16 Pa at 3 km. */
    @Test
    void trappedAirLowersTheCeilingByWhatItExerts() {
        FlightAir air = FlightAir.of(joint, climb(3000));
        double expected = (300_000 - (101_325 - 70_121.16)) * joint.freeVolume() / 219_048.2;
        assertThat(air.ceiling().chargeKg()).isCloseTo(expected, within(1e-8));
        assertThat(air.warnings()).isEmpty();
    }

    @Test
    void aVentedCompartmentKeepsItsCeilingWithinAPerCent() {
        Climb vented = new Climb(mm(0), mm(3_000_000), new Vent(3, mm(3), Speed.ofMetresPerSecond(200)));
        double ceiling = FlightAir.of(joint, vented).ceiling().chargeKg();
        assertThat(ceiling).isCloseTo(joint.ceiling().chargeKg(), within(0.01 * ceiling));
        assertThat(ceiling).isLessThanOrEqualTo(joint.ceiling().chargeKg());
    }

    @Test
    void thinAirIsFlaggedAboveSixKilometres() {
        assertThat(FlightAir.of(joint, climb(6100)).warnings())
                .extracting(Warning::code)
                .contains("thin-air");
        assertThat(FlightAir.of(joint, climb(5900)).warnings())
                .extracting(Warning::code)
                .doesNotContain("thin-air");
    }

    @Test
    void airThatPartsTheJointByItselfIsWarnedOf() {
        JointPhysics weak = JointPhysics.of(bittern().withPins(List.of()));
        assertThat(FlightAir.of(weak, climb(3000)).warnings())
                .extracting(Warning::code)
                .contains("trapped-air-parts-joint");
    }

    @Test
    void partsLeaveFasterInThinAirAndTheSpeedLimitStillHolds() {
        double ground = joint.separationSpeed(0.001).orElseThrow();
        assertThat(FlightAir.of(joint, climb(3000))
                        .separationSpeed(joint, 0.001)
                        .orElseThrow())
                .isGreaterThan(ground);
        JointPhysics limited =
                JointPhysics.of(bittern().withLimit(new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(15))));
        FlightAir air = FlightAir.of(limited, climb(3000));
        assertThat(air.ceiling().chargeKg()).isLessThan(limited.ceiling().chargeKg());
        assertThat(air.separationSpeed(limited, air.ceiling().chargeKg()).orElseThrow())
                .isCloseTo(15, within(1e-9));
    }

    private static Climb climb(double metres) {
        return new Climb(mm(0), mm(1000 * metres), null);
    }
}
