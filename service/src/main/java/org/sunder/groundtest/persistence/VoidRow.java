package org.sunder.groundtest.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.sunder.groundtest.VoidMark;
import org.sunder.persistence.FlyerRow;
import org.sunder.persistence.RowIds;

/** Row of a void or its lifting. */
@Entity
@Immutable
@Table(name = "ground_test_void")
class VoidRow extends FlyerRow {

    UUID testId;
    int sequence;
    boolean voided;
    String reason;
    Instant at;

    @SuppressWarnings("NullAway.Init")
    protected VoidRow() {}

    VoidRow(UUID flyerId, UUID testId, int sequence, VoidMark mark) {
        super(RowIds.next(), flyerId);
        this.testId = testId;
        this.sequence = sequence;
        this.voided = mark.voided();
        this.reason = mark.reason();
        this.at = mark.at();
    }

    VoidMark mark() {
        return new VoidMark(voided, reason, at);
    }
}
