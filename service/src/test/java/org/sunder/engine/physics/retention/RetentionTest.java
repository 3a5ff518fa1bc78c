package org.sunder.engine.physics.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.newtons;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;

/** Sums of forces, and of deviations: those that err together add, those that err apart add as squares. */
class RetentionTest {

    private static final Fit FIT = new Fit(newtons(20), newtons(4));

    /** 4 pins of a batch of 16 pulls of 10 N scatter: 10·√(4 + 4²/16) = 22.36 N; 12 of another of 36: 10·√(12 + 12²/36) = 40 N. */
    private static PinSet batch(int count, int tests) {
        return new PinSet(PinThread.M2_5, count, new MeasuredBatch(newtons(200), newtons(10), tests));
    }

    /** √(500 + 1600) = 45.83 N. */
    @Test
    void batchesErrApart() {
        Retention both = Retention.ofPins(List.of(batch(4, 16), batch(12, 36)), FIT);
        assertThat(both.pins()).isCloseTo(3200, within(1e-9));
        assertThat(both.pinsSd()).isCloseTo(Math.sqrt(2100), within(1e-9));
    }

    /** Twice 3 pins of nylon err together, and by those of a batch apart. */
    @Test
    void materialAndBatchErrApart() {
        PinSet nylon = PinSet.ofNylon(PinThread.M2_5, 3);
        double together = 2 * nylon.sd();
        Retention all = Retention.ofPins(List.of(nylon, batch(12, 36), nylon), FIT);
        assertThat(all.pinsSd()).isCloseTo(Math.sqrt(together * together + 1600), within(1e-9));
        assertThat(all.pins()).isCloseTo(2 * nylon.force() + 2400, within(1e-9));
    }

    /** 3 N and 4 N apart are 5 N. */
    @Test
    void pinsAndFitErrApart() {
        Retention retention = new Retention(100, 3, 20, 4);
        assertThat(retention.mean()).isEqualTo(120);
        assertThat(retention.sd()).isEqualTo(5);
    }

    @Test
    void whatCannotBeIsRefusedWithEveryFault() {
        UnsoundSetupException refusal = catchThrowableOfType(
                UnsoundSetupException.class,
                () -> Retention.ofPins(List.of(PinSet.ofNylon(PinThread.M3, 0)), new Fit(newtons(-1), newtons(9999))));
        assertThat(refusal.faults())
                .extracting(SetupFault::path)
                .containsExactly("pins[0].count", "fit.force", "fit.uncertainty");
    }

    @Test
    void oneNewtonIsTheLeastThatKeepsAJointClosed() {
        assertThat(Retention.ofPins(List.of(), Fit.of(newtons(1))).mean()).isEqualTo(1);
        UnsoundSetupException refusal = catchThrowableOfType(
                UnsoundSetupException.class, () -> Retention.ofPins(List.of(), Fit.of(newtons(0.99))));
        assertThat(refusal.faults()).extracting(SetupFault::path).containsExactly("pins");
    }
}
