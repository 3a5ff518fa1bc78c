package org.sunder.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;

/** A row of a flyer that may change; each change counts its version on. */
@MappedSuperclass
public abstract class VersionedRow extends FlyerRow {

    @Column(updatable = false)
    private Instant createdAt;

    @Version
    private long version;

    /** For a row that is read. */
    @SuppressWarnings("NullAway.Init")
    protected VersionedRow() {}

    /** A new row. */
    protected VersionedRow(UUID id, UUID flyerId, Instant createdAt) {
        super(id, flyerId);
        this.createdAt = createdAt;
    }

    /** When it was entered. */
    public Instant createdAt() {
        return createdAt;
    }

    /** How often it was changed. */
    public long version() {
        return version;
    }
}
