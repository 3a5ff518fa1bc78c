package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.Outcome;

/** A backup charge beside what was fired; the handbook charge is 1 g at 100 kPa, the measure 0.05 g. */
class BackupChargeTest {

    private static BackupCharge backup(int primary, Firing... firings) {
        return BackupCharge.of(Cases.of(firings), primary);
    }

    @Test
    void saysHowFarAboveWhatWasFiredItLies() {
        BackupCharge backup = backup(24, Cases.firing(1.30, Outcome.SEPARATED, false));
        assertThat(backup.charge()).isCloseTo(0.00150, within(1e-9));
        assertThat(backup.highestFired()).isCloseTo(0.00130, within(1e-9));
        assertThat(backup.firedBefore()).isFalse();
        assertThat(backup.timesFired()).isCloseTo(1.50 / 1.30, within(1e-9));
        assertThat(backup.proof()).containsExactly(0.0015);
    }

    @Test
    void whatWasFiredNeedsNoProof() {
        BackupCharge backup =
                backup(24, Cases.firing(1.50, Outcome.SEPARATED, false), Cases.firing(1.20, Outcome.SEPARATED, false));
        assertThat(backup.firedBefore()).isTrue();
        assertThat(backup.proof()).isEmpty();
    }

    @Test
    void damagingAndVoidFiringsProveNothing() {
        Firing odd = Cases.firing(1.5, Outcome.SEPARATED, false);
        Firing isVoid = new Firing(
                odd.charge(), odd.logRatio(), odd.gaugePressure(), odd.outcome(), false, false, odd.currentSetup());
        BackupCharge backup = backup(
                24, Cases.firing(1.2, Outcome.SEPARATED, false), isVoid, Cases.firing(2.0, Outcome.SEPARATED, true));
        assertThat(backup.highestFired()).isCloseTo(0.0012, within(1e-9));
        assertThat(backup.firedBefore()).isFalse();
    }

    /** 2 g made 120 kPa in a larger compartment; here 120 kPa are 1.2 g. */
    @Test
    void anEarlierSetupCountsAtTheChargeOfTheSamePressure() {
        Firing elsewhere = new Firing(0.002, 0, 120_000, Outcome.SEPARATED, false, true, false);
        BackupCharge backup = backup(20, elsewhere, Cases.firing(1.0, Outcome.SEPARATED, false));
        assertThat(backup.highestFired()).isCloseTo(0.0012, within(1e-9));
    }

    /** 1.2 g were fired: 1.75 g is more than 1.25 times that, so 1.50 g comes first. */
    @Test
    void theProofKeepsToTheLargestStep() {
        BackupCharge backup = backup(28, Cases.firing(1.2, Outcome.SEPARATED, false));
        assertThat(backup.charge()).isCloseTo(0.00175, within(1e-9));
        assertThat(backup.proof()).containsExactly(30 * 0.00005, 35 * 0.00005);
    }

    @Test
    void aProofIsAllowedShotByShot() {
        Random random = new Random(6);
        int proofs = 0;
        for (Cases.Kind kind : Cases.Kind.values()) {
            for (int i = 0; i < 60; i++) {
                PlanningCase on = Cases.random(kind, random);
                if (FlightAdvice.of(on) instanceof FlightCharge flight) {
                    proofs += allowed(on, flight.backup()) ? 1 : 0;
                }
            }
        }
        assertThat(proofs).isPositive();
    }

    /** Whether there is a proof; each of its shots is then allowed, and the last is the backup. */
    private static boolean allowed(PlanningCase on, BackupCharge backup) {
        double highest = StrictMath.exp(Safeguards.highestUndamaged(on).orElseThrow()) * on.handbookCharge();
        for (double shot : backup.proof()) {
            assertThat(shot).isLessThanOrEqualTo(1.25 * highest * (1 + 1e-6));
            assertThat(Safeguards.checkLimits(on, (int) Math.round(shot / on.measureStep())))
                    .isEmpty();
            highest = Math.max(highest, shot);
        }
        if (backup.proof().isEmpty()) {
            return false;
        }
        assertThat(backup.firedBefore()).isFalse();
        assertThat(backup.proof().get(backup.proof().size() - 1)).isCloseTo(backup.charge(), within(1e-12));
        return true;
    }
}
