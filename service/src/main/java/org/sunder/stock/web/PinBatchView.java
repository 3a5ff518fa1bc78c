package org.sunder.stock.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Force;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PullTest;

/** A batch of pins as answered. */
@Schema(name = "PinBatch", description = "A batch of shear pins with its pull tests and what they say together.")
record PinBatchView(
        UUID id,
        @Schema(example = "white nylon, bag of 100") String name,
        PinThread thread,
        @Nullable String lot,
        @Nullable String note,

        @Schema(description = "Pull tests in the order they were entered.")
        List<PullView> pullTests,

        StatisticsView statistics,

        @Schema(description = "What to mind of its pulls: one that lies far from the others.") @Nullable String finding,

        Instant createdAt,

        @Schema(description = "When it was put away; absent while it is in use.") @Nullable Instant archivedAt) {

    /** One pull test. */
    @Schema(name = "PullTest", description = "One pin, pulled until it broke.")
    record PullView(
            @Schema(description = "In the order entered, from 1.", example = "1")
            int number,

            Force force,
            Instant at,

            @Schema(description = "Whether it stays in the list but does not count.", example = "false")
            boolean leftOut) {}

    /** What the pull tests say together. */
    @Schema(
            name = "PullStatistics",
            description = "What the pull tests that count say of one pin; mean and scatter from two on.")
    record StatisticsView(
            @Schema(description = "How many pulls count.", example = "6")
            int count,

            @Schema(description = "Sample mean.") @Nullable Force mean,

            @Schema(description = "Sample standard deviation (n - 1).") @Nullable Force standardDeviation) {}

    static PinBatchView of(PinBatch batch) {
        int count = batch.counted().size();
        return new PinBatchView(
                batch.id(),
                batch.details().name(),
                batch.details().thread(),
                batch.details().lot(),
                batch.details().note(),
                pulls(batch.pulls()),
                batch.strength()
                        .map(s -> new StatisticsView(count, s.mean(), s.standardDeviation()))
                        .orElseGet(() -> new StatisticsView(count, null, null)),
                batch.finding().orElse(null),
                batch.createdAt(),
                batch.archivedAt());
    }

    private static List<PullView> pulls(List<PullTest> pulls) {
        return IntStream.range(0, pulls.size())
                .mapToObj(i -> new PullView(
                        i + 1,
                        pulls.get(i).force(),
                        pulls.get(i).at(),
                        pulls.get(i).leftOut()))
                .toList();
    }
}
