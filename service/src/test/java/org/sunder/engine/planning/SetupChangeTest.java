package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Pressure;

/** Ways out when the target lies above the ceiling. A tube of 100 mm by 200 mm, four M2.5 pins, a fit of 15 N. */
class SetupChangeTest {

    private static final JointSetup SETUP = new JointSetup(
            Length.ofMetres(0.1),
            List.of(new CavitySegment.Cylinder(Length.ofMetres(0.1), Length.ofMetres(0.2))),
            List.of(),
            List.of(PinSet.ofNylon(PinThread.M2_5, 4)),
            Fit.of(Force.ofNewtons(15)),
            Powder.FINE_BLACK_POWDER,
            null,
            null,
            null,
            new Limit.GaugePressureLimit(Pressure.ofPascals(200_000)));

    private static Map<SetupChange.Kind, SetupChange> changes(JointSetup setup, double ratio) {
        return SetupChange.of(JointPhysics.of(setup), ratio).stream()
                .collect(Collectors.toMap(SetupChange::kind, Function.identity()));
    }

    /**
     * By hand: a pin holds 69 MPa · 2.980 mm² = 205.6 N, four and the fit 837.5 N, over 78.54 cm² 106.6 kPa. At 2.2 times
     * the handbook charge 234.6 kPa, above the limit; three pins give 80.45 kPa, and 177 kPa is below it.
     */
    @Test
    void onePinLessMayDo() {
        SetupChange fewer = changes(SETUP, 2.2).get(SetupChange.Kind.FEWER_PINS);
        assertThat(fewer.pins().get(0).count()).isEqualTo(3);
        assertThat(fewer.physics().thresholdPressure()).isCloseTo(80_450, within(50.0));
        assertThat(fewer.targetCharge()).isCloseTo(2.2 * fewer.physics().handbookCharge(), within(1e-12));
    }

    /** M2 pins hold 69 MPa · 1.789 mm² = 123.4 N: four and the fit 508.8 N, 64.8 kPa. */
    @Test
    void theNextSmallerThreadMayDo() {
        SetupChange smaller = changes(SETUP, 2.2).get(SetupChange.Kind.SMALLER_PINS);
        assertThat(smaller.pins()).containsExactly(PinSet.ofNylon(PinThread.M2, 4));
        assertThat(smaller.physics().thresholdPressure()).isCloseTo(64_780, within(50.0));
    }

    @Test
    void lessVolumeIsNoWayOutOfAPressureLimit() {
        assertThat(changes(SETUP, 2.2)).doesNotContainKey(SetupChange.Kind.LESS_VOLUME);
    }

    @Test
    void aCeilingThatFallsWithTheSetupLeavesNoWayOut() {
        assertThat(changes(SETUP.withLimit(null), 3.5)).isEmpty();
    }

    @Test
    void everyWayOutKeepsTheTargetBelowItsOwnCeiling() {
        for (double ratio = 1.9; ratio < 6; ratio *= 1.1) {
            for (SetupChange change : SetupChange.of(JointPhysics.of(SETUP), ratio)) {
                assertThat(change.targetCharge())
                        .isLessThan(change.physics().ceiling().chargeKg());
            }
        }
    }
}
