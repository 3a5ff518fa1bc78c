package org.sunder.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.physics.retention.PullTests;
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

    /** The pulls that count, in the order they were entered. */
    public List<PullTest> counted() {
        return pulls.stream().filter(pull -> !pull.leftOut()).toList();
    }

    /** Strength by the pulls that count, in the unit of the first and to five digits; empty with fewer than two. */
    public Optional<MeasuredBatch> strength() {
        List<PullTest> counted = counted();
        if (counted.size() < FEWEST) {
            return Optional.empty();
        }
        ForceUnit unit = counted.get(0).force().unit();
        MeasuredBatch batch =
                PullTests.batch(counted.stream().map(PullTest::force).toList());
        return Optional.of(new MeasuredBatch(
                batch.mean().in(unit, DIGITS), batch.standardDeviation().in(unit, DIGITS), batch.tests()));
    }

    /** The number, from 1, of a pull that counts and lies far from the others that do. */
    public OptionalInt far() {
        List<PullTest> counted = counted();
        OptionalInt astray =
                PullTests.astray(counted.stream().map(PullTest::force).toList());
        return astray.isPresent()
                ? OptionalInt.of(pulls.indexOf(counted.get(astray.getAsInt())) + 1)
                : OptionalInt.empty();
    }

    /** What to mind of its pulls: one that lies far from the others. */
    public Optional<String> finding() {
        OptionalInt far = far();
        if (far.isEmpty()) {
            return Optional.empty();
        }
        Force force = pulls.get(far.getAsInt() - 1).force();
        return Optional.of("Pull " + far.getAsInt() + ", " + force.value().toPlainString() + " " + force.unit()
                + ", lies far from the others: by chance that happens to 1 batch in 20 at most. Was it another pin, or"
                + " another unit? Pull more, or leave it out of what counts; it stays in the list and can be taken"
                + " back.");
    }
}
