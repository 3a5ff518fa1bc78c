package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;

/** Row of a load-out; its sheet is kept as one JSON document. */
@Entity
@Table(name = "load_out")
class LoadOutRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    @Column(updatable = false)
    UUID flyerId;

    @Column(updatable = false)
    UUID airframeId;

    @Column(length = 200_000)
    String document;

    @Column(updatable = false)
    Instant createdAt;

    @Version
    long version;

    @jakarta.persistence.Transient
    private boolean fresh;

    @SuppressWarnings("NullAway.Init")
    protected LoadOutRow() {}

    LoadOutRow(UUID id, UUID flyerId, UUID airframeId, String document, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.airframeId = airframeId;
        this.document = document;
        this.createdAt = now;
        this.fresh = true;
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
