package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.sunder.persistence.FlyerRow;

/** Row of a setup: its sheet is kept as one JSON document, since a revision never changes. */
@Entity
@Immutable
@Table(name = "setup")
class SetupRow extends FlyerRow {

    UUID jointId;

    int revision;

    @Column(length = 200_000)
    String document;

    Instant createdAt;

    @SuppressWarnings("NullAway.Init")
    protected SetupRow() {}

    SetupRow(UUID id, UUID flyerId, UUID jointId, int revision, String document, Instant now) {
        super(id, flyerId);
        this.jointId = jointId;
        this.revision = revision;
        this.document = document;
        this.createdAt = now;
    }
}
