package org.sunder.engine.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.bittern;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.kPa;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.Setups;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.flight.FlightCase.Climb;
import org.sunder.engine.physics.flight.FlightCase.Drag;
import org.sunder.engine.physics.flight.FlightCase.Jerk;
import org.sunder.engine.physics.flight.FlightCase.Vent;
import org.sunder.engine.quantity.Acceleration;
import org.sunder.engine.quantity.AccelerationUnit;
import org.sunder.engine.quantity.Speed;

class PinsInFlightTest {

    private static final Climb CLOSED = new Climb(mm(0), mm(3_000_000), null);
    private static final Climb VENTED =
            new Climb(mm(0), mm(3_000_000), new Vent(3, mm(3), Speed.ofMetresPerSecond(200)));

    /** Standard atmosphere: 101325 − 70121.16 Pa at 3 km, on 66.476 cm². */
    @Test
    void closedCompartmentKeepsTheAirOfTheGround() {
        PinsInFlight pins = PinsInFlight.of(bittern(), new FlightCase(CLOSED, null, null), 2);
        double force = (101_325 - 70_121.16) * Math.PI / 4 * 0.092 * 0.092;
        assertThat(pins.find(LoadKind.TRAPPED_PRESSURE).orElseThrow().force()).isCloseTo(force, within(0.1));
        assertThat(pins.worst()).isCloseTo(force, within(0.1));
    }

    @Test
    void ventsLeaveOnlyTheirLag() {
        double closed = FlightLoads.trappedPressure(CLOSED, 1.52e-3);
        double vented = FlightLoads.trappedPressure(VENTED, 1.52e-3);
        assertThat(vented).isPositive().isLessThan(0.01 * closed);
        Climb pinhole = new Climb(mm(0), mm(3_000_000), new Vent(1, mm(0.1), Speed.ofMetresPerSecond(200)));
        assertThat(FlightLoads.trappedPressure(pinhole, 1.52e-3)).isEqualTo(closed);
    }

    /** Newton's second law for each part alone, with the common acceleration. */
    @Test
    void dragSeparationBalancesBothParts() {
        double pull = FlightLoads.dragSeparation(0.9, 4.1, 20, 300);
        double acceleration = 320 / 5.0;
        assertThat(pull).isCloseTo(300 - 4.1 * acceleration, within(1e-9));
        assertThat(pull).isCloseTo(0.9 * acceleration - 20, within(1e-9));
        assertThat(FlightLoads.dragSeparation(0.9, 4.1, 300, 20)).isZero();
    }

    @Test
    void jerkIsMassTimesDecelerationAndAddsToTrappedAir() {
        Jerk jerk = new Jerk(grams(900), new Acceleration(BigDecimal.TEN, AccelerationUnit.STANDARD_GRAVITY));
        PinsInFlight pins = PinsInFlight.of(bittern(), new FlightCase(CLOSED, null, jerk), 2);
        double alone = pins.find(LoadKind.FIRST_EVENT_JERK).orElseThrow().force();
        assertThat(alone).isCloseTo(0.9 * 98.0665, within(1e-9));
        double trapped = pins.find(LoadKind.TRAPPED_PRESSURE).orElseThrow().force();
        assertThat(pins.worst()).isCloseTo(alone + trapped, within(1e-9));
    }

    /** ceil(margin·F/f_low), f_low = 205.63·(1 − 1.645·0.10) N by hand. */
    @Test
    void smallestCountHoldsTheMarginWithWeakPins() {
        PinsInFlight pins = PinsInFlight.of(bittern(), new FlightCase(CLOSED, null, null), 2);
        double low = 205.63 * (1 - 0.16449);
        assertThat(pins.holdingForce()).isCloseTo(3 * low, within(0.1));
        assertThat(pins.smallest().count())
                .isEqualTo((int) Math.ceil(2 * 207.43 / low))
                .isEqualTo(3);
        assertThat(pins.holds()).isTrue();
        assertThat(pins.smallest()).isInstanceOf(PinChoice.Holds.class);
        double breaking = 3 * 205.63 * 1.16449 + 15 + 1.64485 * 7.5;
        assertThat(pins.smallest().chargeKg()).isCloseTo(breaking / 6.6476e-3 * 1.5199e-3 / 219_048, within(2e-6));
    }

    @Test
    void saysWhenNoCountBothHoldsAndBreaksBelowTheCeiling() {
        JointSetup weak = bittern().withLimit(new Limit.GaugePressureLimit(kPa(110)));
        PinChoice choice =
                PinsInFlight.of(weak, new FlightCase(CLOSED, null, null), 2).smallest();
        assertThat(choice).isInstanceOf(PinChoice.NoCountDoesBoth.class);
        assertThat(choice.chargeKg()).isGreaterThan(choice.ceiling().chargeKg());
        assertThat(PinsInFlight.of(weak, new FlightCase(VENTED, null, null), 2).smallest())
                .isInstanceOf(PinChoice.Holds.class);
    }

    @Test
    void nothingThatPullsNeedsOnePinAndLeavesAnEndlessMargin() {
        PinsInFlight pins = PinsInFlight.of(bittern(), new FlightCase(null, null, null), 2);
        assertThat(pins.margin()).isInfinite();
        assertThat(pins.smallest().count()).isEqualTo(1);
    }

    @Test
    void tellsEveryFaultOfAFlight() {
        JointSetup bare = Setups.tube(98, 300, 100);
        FlightCase flight = new FlightCase(
                new Climb(mm(0), mm(1e9), new Vent(0, mm(0), Speed.ofMetresPerSecond(-1))),
                new Drag(newtons(-1), newtons(1)),
                new Jerk(grams(0), Acceleration.ofMetresPerSecondSquared(-1)));
        var refusal = catchThrowableOfType(UnsoundSetupException.class, () -> PinsInFlight.of(bare, flight, 0.5));
        assertThat(refusal.faults())
                .extracting(SetupFault::path)
                .containsExactlyElementsOf(List.of(
                        "margin",
                        "pins",
                        "flight.climb.event",
                        "flight.climb.vent.holes",
                        "flight.climb.vent.diameter",
                        "flight.climb.vent.ascent",
                        "flight.drag.forward",
                        "flight.drag",
                        "flight.jerk.mass",
                        "flight.jerk.deceleration"));
    }
}
