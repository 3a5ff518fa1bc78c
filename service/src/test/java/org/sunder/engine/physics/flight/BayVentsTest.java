package org.sunder.engine.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.mm;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

class BayVentsTest {

    private static final Volume HUNDRED_CUBIC_INCHES = new Volume(BigDecimal.valueOf(100), VolumeUnit.CUBIC_INCH);

    /** Common practice: one 1/4 in hole per 100 in³, A/V = 4.9087e-4 in²/in³. */
    @Test
    void aHundredCubicInchesGetOneQuarterInchHole() {
        BayVents vents = BayVents.of(HUNDRED_CUBIC_INCHES, 1, speed(100), mm(0));
        assertThat(vents.diameter()).isCloseTo(0.00635, within(1e-12));
        assertThat(vents.drills()).extracting(DrillSize::name).containsExactly("1/4 in", "#1", "6.3 mm");
        assertThat(vents.totalArea() / (0.0254 * 0.0254) / 100).isCloseTo(4.9087e-4, within(1e-8));
        assertThat(vents.cautions()).extracting(Warning::code).containsExactly("single-vent");
    }

    @Test
    void fourHolesShareTheArea() {
        BayVents vents = BayVents.of(HUNDRED_CUBIC_INCHES, 4, speed(100), mm(0));
        assertThat(vents.diameter()).isCloseTo(0.003175, within(1e-12));
        assertThat(vents.drills()).extracting(DrillSize::name).containsExactly("1/8 in", "#30", "3.2 mm");
        assertThat(vents.cautions()).isEmpty();
    }

    /** Quasi-steady lag of that rule in sea-level air, computed outside the project. */
    @ParameterizedTest
    @CsvSource({"100, 0.640, 0.053", "200, 2.561, 0.213", "300, 5.763, 0.480"})
    void lagGrowsAsTheSquareOfTheSpeed(double speed, double pascals, double metres) {
        VentLag lag = BayVents.of(HUNDRED_CUBIC_INCHES, 3, speed(speed), mm(0)).lag();
        assertThat(lag.pressure()).isCloseTo(pascals, within(1e-3 * pascals));
        assertThat(lag.altitudeError()).isCloseTo(metres, within(0.0006));
    }

    /** The lag is the Δp at which the orifice itself passes what the climb asks for. */
    @Test
    void lagIsWhatTheOrificePasses() {
        Orifice vent = Orifice.ofHoles(3, 0.002);
        Air air = StandardAtmosphere.atGeometric(1500);
        VentLag lag = VentLag.of(2e-3, vent, air, 150);
        double asked = 2e-3 / (StandardAtmosphere.GAS_CONSTANT * air.temperature()) * air.density() * 9.80665 * 150;
        double passed = vent.airFlow(air.pressure() + lag.pressure(), air.temperature(), air.pressure());
        assertThat(passed).isCloseTo(asked, within(1e-3 * asked));
    }

    @Test
    void twoHolesAreRefusedWithEveryOtherFault() {
        var refusal = catchThrowableOfType(
                UnsoundSetupException.class, () -> BayVents.of(Volume.ofCubicMetres(0), 2, speed(-1), mm(99_000_000)));
        assertThat(refusal.faults()).extracting(SetupFault::path).containsExactly("bay", "holes", "speed", "altitude");
    }

    private static Speed speed(double value) {
        return Speed.ofMetresPerSecond(value);
    }
}
