package org.sunder.groundtest.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;
import org.sunder.groundtest.VoidMark;
import org.sunder.http.RowIds;

/** Row of a void or its lifting. */
@Entity
@Immutable
@Table(name = "ground_test_void")
class VoidRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    UUID flyerId;

    UUID testId;
    int sequence;
    boolean voided;
    String reason;
    Instant at;

    @jakarta.persistence.Transient
    private boolean fresh = true;

    @SuppressWarnings("NullAway.Init")
    protected VoidRow() {}

    VoidRow(UUID flyerId, UUID testId, int sequence, VoidMark mark) {
        this.id = RowIds.next();
        this.flyerId = flyerId;
        this.testId = testId;
        this.sequence = sequence;
        this.voided = mark.voided();
        this.reason = mark.reason();
        this.at = mark.at();
    }

    VoidMark mark() {
        return new VoidMark(voided, reason, at);
    }

    @PostLoad
    void loaded() {
        fresh = false;
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
