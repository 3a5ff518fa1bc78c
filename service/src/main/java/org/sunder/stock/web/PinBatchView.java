package org.sunder.stock.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.PinThread;
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
    record PullView(Force force, Instant at) {

        static PullView of(PullTest test) {
            return new PullView(test.force(), test.at());
        }
    }

    /** What the pull tests say together. */
    @Schema(
            name = "PullStatistics",
            description = "What the pull tests say of one pin; mean and scatter from two tests on.")
    record StatisticsView(
            @Schema(description = "How many pins were pulled.", example = "6")
            int count,

            @Schema(description = "Sample mean.") @Nullable Force mean,

            @Schema(description = "Sample standard deviation (n - 1).") @Nullable Force standardDeviation) {}

    static PinBatchView of(PinBatch batch) {
        int count = batch.pulls().size();
        return new PinBatchView(
                batch.id(),
                batch.details().name(),
                batch.details().thread(),
                batch.details().lot(),
                batch.details().note(),
                batch.pulls().stream().map(PullView::of).toList(),
                batch.strength()
                        .map(s -> new StatisticsView(count, s.mean(), s.standardDeviation()))
                        .orElseGet(() -> new StatisticsView(count, null, null)),
                batch.finding().orElse(null),
                batch.createdAt(),
                batch.archivedAt());
    }
}
