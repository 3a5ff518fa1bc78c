package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.springframework.data.domain.Persistable;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Joint;

/** Row of a joint. */
@Entity
@Table(name = "joint")
class JointRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    @Column(updatable = false)
    UUID flyerId;

    @Column(updatable = false)
    UUID airframeId;

    String name;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(20)")
    DeploymentEvent event;

    int currentRevision;

    @Column(updatable = false)
    Instant createdAt;

    @Version
    long version;

    @jakarta.persistence.Transient
    private boolean fresh;

    @SuppressWarnings("NullAway.Init")
    protected JointRow() {}

    JointRow(UUID id, UUID flyerId, UUID airframeId, String name, DeploymentEvent event, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.airframeId = airframeId;
        this.name = name;
        this.event = event;
        this.currentRevision = 1;
        this.createdAt = now;
        this.fresh = true;
    }

    Joint joint() {
        return new Joint(id, airframeId, name, event, currentRevision, createdAt, version);
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
