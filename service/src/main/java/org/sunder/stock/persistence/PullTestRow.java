package org.sunder.stock.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.persistence.FlyerRow;
import org.sunder.persistence.QuantityColumns;
import org.sunder.persistence.RowIds;
import org.sunder.stock.PullTest;

/** Row of a pull test. */
@Entity
@Table(name = "pull_test")
class PullTestRow extends FlyerRow {

    UUID batchId;
    int sequence;
    String forceValue;
    String forceUnit;
    Instant at;
    boolean leftOut;

    @SuppressWarnings("NullAway.Init")
    protected PullTestRow() {}

    PullTestRow(UUID flyerId, UUID batchId, int sequence, Force force, Instant now) {
        super(RowIds.next(), flyerId);
        this.batchId = batchId;
        this.sequence = sequence;
        this.forceValue = force.value().toPlainString();
        this.forceUnit = force.unit().symbol();
        this.at = now;
    }

    PullTest test() {
        return new PullTest(QuantityColumns.read(forceValue, forceUnit, ForceUnit.class, Force::new), at, leftOut);
    }
}
