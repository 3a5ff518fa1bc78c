package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Joint;
import org.sunder.persistence.VersionedRow;

/** Row of a joint. */
@Entity
@Table(name = "joint")
class JointRow extends VersionedRow {

    @Column(updatable = false)
    UUID airframeId;

    String name;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(20)")
    DeploymentEvent event;

    int currentRevision;

    @SuppressWarnings("NullAway.Init")
    protected JointRow() {}

    JointRow(UUID id, UUID flyerId, UUID airframeId, String name, DeploymentEvent event, Instant now) {
        super(id, flyerId, now);
        this.airframeId = airframeId;
        this.name = name;
        this.event = event;
        this.currentRevision = 1;
    }

    Joint joint() {
        return new Joint(getId(), airframeId, name, event, currentRevision, createdAt(), version());
    }
}
