package org.sunder.stock.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.persistence.VersionedRow;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatchDetails;
import org.sunder.stock.PullTest;

/** Row of a batch of pins. */
@Entity
@Table(name = "pin_batch")
class PinBatchRow extends VersionedRow {

    String name;
    String thread;

    @Nullable String lot;

    @Nullable String note;

    /** How many pull tests it has: a new one changes the row and so its version. */
    int pulls;

    @Nullable Instant archivedAt;

    @SuppressWarnings("NullAway.Init")
    protected PinBatchRow() {}

    @SuppressWarnings("NullAway.Init")
    PinBatchRow(UUID id, UUID flyerId, PinBatchDetails details, Instant now) {
        super(id, flyerId, now);
        describe(details);
    }

    void describe(PinBatchDetails details) {
        name = details.name();
        thread = details.thread().toString();
        lot = details.lot();
        note = details.note();
    }

    PinBatch batch(List<PullTest> tests) {
        PinThread known = PinThread.find(thread)
                .orElseThrow(() -> new IllegalStateException("unknown thread in the database: " + thread));
        return new PinBatch(
                getId(), new PinBatchDetails(name, known, lot, note), tests, createdAt(), archivedAt, version());
    }
}
