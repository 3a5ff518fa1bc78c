package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;

/** Row of a setup: its sheet is kept as one JSON document, since a revision never changes. */
@Entity
@Immutable
@Table(name = "setup")
class SetupRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    UUID flyerId;

    UUID jointId;

    int revision;

    @Column(length = 200_000)
    String document;

    Instant createdAt;

    @jakarta.persistence.Transient
    private boolean fresh = true;

    @SuppressWarnings("NullAway.Init")
    protected SetupRow() {}

    SetupRow(UUID id, UUID flyerId, UUID jointId, int revision, String document, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.jointId = jointId;
        this.revision = revision;
        this.document = document;
        this.createdAt = now;
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
