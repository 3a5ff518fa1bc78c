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
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeDetails;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.http.QuantityColumns;

/** Row of an airframe. */
@Entity
@Table(name = "airframe")
class AirframeRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    @Column(updatable = false)
    UUID flyerId;

    String name;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(10)")
    UnitSystem units;

    @Nullable String outerDiameterValue;

    @Nullable String outerDiameterUnit;

    @Nullable String notes;

    @Column(updatable = false)
    Instant createdAt;

    @Nullable Instant archivedAt;

    @Version
    long version;

    @jakarta.persistence.Transient
    private boolean fresh;

    @SuppressWarnings("NullAway.Init")
    protected AirframeRow() {}

    @SuppressWarnings("NullAway.Init")
    AirframeRow(UUID id, UUID flyerId, AirframeDetails details, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.createdAt = now;
        this.fresh = true;
        describe(details);
    }

    void describe(AirframeDetails details) {
        name = details.name();
        units = details.units();
        outerDiameterValue = QuantityColumns.digits(details.outerDiameter());
        outerDiameterUnit = QuantityColumns.unit(details.outerDiameter());
        notes = details.notes();
    }

    Airframe airframe() {
        Length diameter = outerDiameterValue == null || outerDiameterUnit == null
                ? null
                : QuantityColumns.read(outerDiameterValue, outerDiameterUnit, LengthUnit.class, Length::new);
        return new Airframe(id, name, units, diameter, notes, createdAt, archivedAt, version);
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
