package org.sunder.stock.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import org.sunder.engine.physics.PinThread;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatchDetails;
import org.sunder.stock.PullTest;

/** Row of a batch of pins. */
@Entity
@Table(name = "pin_batch")
class PinBatchRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    @Column(updatable = false)
    UUID flyerId;

    String name;
    String thread;

    @Nullable String lot;

    @Nullable String note;

    /** How many pull tests it has: a new one changes the row and so its version. */
    int pulls;

    @Column(updatable = false)
    Instant createdAt;

    @Nullable Instant archivedAt;

    @Version
    long version;

    @jakarta.persistence.Transient
    private boolean fresh;

    @SuppressWarnings("NullAway.Init")
    protected PinBatchRow() {}

    @SuppressWarnings("NullAway.Init")
    PinBatchRow(UUID id, UUID flyerId, PinBatchDetails details, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.createdAt = now;
        this.fresh = true;
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
        return new PinBatch(id, new PinBatchDetails(name, known, lot, note), tests, createdAt, archivedAt, version);
    }

    @Override
    public UUID getId() {
        return id;
    }

    @Override
    public boolean isNew() {
        return fresh;
    }
}
