package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.sunder.persistence.VersionedRow;

/** Row of a load-out; its sheet is kept as one JSON document. */
@Entity
@Table(name = "load_out")
class LoadOutRow extends VersionedRow {

    @Column(updatable = false)
    UUID airframeId;

    @Column(length = 200_000)
    String document;

    @SuppressWarnings("NullAway.Init")
    protected LoadOutRow() {}

    LoadOutRow(UUID id, UUID flyerId, UUID airframeId, String document, Instant now) {
        super(id, flyerId, now);
        this.airframeId = airframeId;
        this.document = document;
    }
}
