package org.sunder.stock.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.http.QuantityColumns;
import org.sunder.http.RowIds;
import org.sunder.stock.PullTest;

/** Row of a pull test. */
@Entity
@Immutable
@Table(name = "pull_test")
class PullTestRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    UUID flyerId;

    UUID batchId;
    int sequence;
    String forceValue;
    String forceUnit;
    Instant at;

    @jakarta.persistence.Transient
    private boolean fresh = true;

    @SuppressWarnings("NullAway.Init")
    protected PullTestRow() {}

    PullTestRow(UUID flyerId, UUID batchId, int sequence, Force force, Instant now) {
        this.id = RowIds.next();
        this.flyerId = flyerId;
        this.batchId = batchId;
        this.sequence = sequence;
        this.forceValue = force.value().toPlainString();
        this.forceUnit = force.unit().symbol();
        this.at = now;
    }

    PullTest test() {
        return new PullTest(QuantityColumns.read(forceValue, forceUnit, ForceUnit.class, Force::new), at);
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
