package org.sunder.airframe.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeDetails;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.persistence.QuantityColumns;
import org.sunder.persistence.VersionedRow;

/** Row of an airframe. */
@Entity
@Table(name = "airframe")
class AirframeRow extends VersionedRow {

    String name;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(10)")
    UnitSystem units;

    @Nullable String outerDiameterValue;

    @Nullable String outerDiameterUnit;

    @Nullable String notes;

    @Nullable Instant archivedAt;

    @SuppressWarnings("NullAway.Init")
    protected AirframeRow() {}

    @SuppressWarnings("NullAway.Init")
    AirframeRow(UUID id, UUID flyerId, AirframeDetails details, Instant now) {
        super(id, flyerId, now);
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
        // One that cannot be read, by a hand in the database, is as good as none.
        Length diameter = QuantityColumns.find(outerDiameterValue, outerDiameterUnit, LengthUnit.class, Length::new)
                .orElse(null);
        return new Airframe(getId(), name, units, diameter, notes, createdAt(), archivedAt, version());
    }
}
