package org.sunder.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Transient;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;

/** What every row of a flyer begins with. It knows whether it is new, so that to store it asks nothing first. */
@MappedSuperclass
public abstract class FlyerRow implements Persistable<UUID> {

    @Id
    private UUID id;

    @PartitionKey
    @Column(updatable = false)
    private UUID flyerId;

    @Transient
    private final boolean fresh;

    /** For a row that is read. */
    @SuppressWarnings("NullAway.Init")
    protected FlyerRow() {
        this.fresh = false;
    }

    /** A new row. */
    protected FlyerRow(UUID id, UUID flyerId) {
        this.id = id;
        this.flyerId = flyerId;
        this.fresh = true;
    }

    @Override
    public UUID getId() {
        return id;
    }

    /** Whose row it is. */
    public UUID flyerId() {
        return flyerId;
    }

    @Override
    public boolean isNew() {
        return fresh;
    }
}
