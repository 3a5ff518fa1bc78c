package org.sunder.stock.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.PartitionKey;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.SpecificEnergyUnit;
import org.sunder.http.QuantityColumns;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.StockPowder;

/** Row of a powder. */
@Entity
@Table(name = "powder")
class PowderRow implements Persistable<UUID> {

    @Id
    UUID id;

    @PartitionKey
    @Column(updatable = false)
    UUID flyerId;

    String name;

    @Nullable String nameInUse;

    @Nullable String lot;

    @Nullable String granulation;

    String forceValue;
    String forceUnit;
    String relativeUncertainty;

    @Nullable String note;

    @Column(updatable = false)
    Instant createdAt;

    @Nullable Instant archivedAt;

    @Version
    long version;

    @jakarta.persistence.Transient
    private boolean fresh;

    @SuppressWarnings("NullAway.Init")
    protected PowderRow() {}

    @SuppressWarnings("NullAway.Init")
    PowderRow(UUID id, UUID flyerId, PowderDetails details, Instant now) {
        this.id = id;
        this.flyerId = flyerId;
        this.createdAt = now;
        this.fresh = true;
        describe(details);
    }

    void describe(PowderDetails details) {
        name = details.name();
        nameInUse = details.name();
        lot = details.lot();
        granulation = details.granulation();
        forceValue = details.powderForce().value().toPlainString();
        forceUnit = details.powderForce().unit().symbol();
        relativeUncertainty = details.relativeUncertainty().toPlainString();
        note = details.note();
    }

    void archive(Instant now) {
        archivedAt = now;
        nameInUse = null;
    }

    StockPowder powder() {
        SpecificEnergy force =
                QuantityColumns.read(forceValue, forceUnit, SpecificEnergyUnit.class, SpecificEnergy::new);
        PowderDetails details =
                new PowderDetails(name, lot, granulation, force, new BigDecimal(relativeUncertainty), note);
        return new StockPowder(id, details, createdAt, archivedAt, version);
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
