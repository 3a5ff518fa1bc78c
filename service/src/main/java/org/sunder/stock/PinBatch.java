package org.sunder.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.PinStrength.MeasuredBatch;
import org.sunder.engine.physics.PullTests;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;

/**
 * A batch of shear pins.
 *
 * @param id UUID version 7
 * @param details what is said about it
 * @param pulls its pull tests in the order they were entered
 * @param createdAt when it was entered
 * @param archivedAt when it was put away
 * @param version counts its changes, pull tests among them
 */
public record PinBatch(
        UUID id,
        PinBatchDetails details,
        List<PullTest> pulls,
        Instant createdAt,
        @Nullable Instant archivedAt,
        long version) {

    /** Fewest pull tests that have a scatter. */
    public static final int FEWEST = 2;

    private static final int DIGITS = 5;

    /** Copies the list. */
    public PinBatch {
        pulls = List.copyOf(pulls);
    }

    /** Strength by its pull tests, in the unit of the first and to five digits; empty with fewer than two. */
    public Optional<MeasuredBatch> strength() {
        if (pulls.size() < FEWEST) {
            return Optional.empty();
        }
        ForceUnit unit = pulls.get(0).force().unit();
        MeasuredBatch batch =
                PullTests.batch(pulls.stream().map(PullTest::force).toList());
        return Optional.of(new MeasuredBatch(
                batch.mean().in(unit, DIGITS), batch.standardDeviation().in(unit, DIGITS), batch.tests()));
    }

    /** What to mind of its pulls: one that lies far from the others. */
    public Optional<String> finding() {
        List<Force> forces = pulls.stream().map(PullTest::force).toList();
        OptionalInt astray = PullTests.astray(forces);
        if (astray.isEmpty()) {
            return Optional.empty();
        }
        Force far = forces.get(astray.getAsInt());
        return Optional.of(
                "Pull " + (astray.getAsInt() + 1) + ", " + far.value().toPlainString() + " " + far.unit()
                        + ", lies far from the others: by chance that happens to 1 batch in 20 at most. Was it another pin, or"
                        + " another unit? Pull more, or enter the batch anew without it.");
    }
}
