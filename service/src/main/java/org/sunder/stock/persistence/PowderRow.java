package org.sunder.stock.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Decimals;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.SpecificEnergyUnit;
import org.sunder.persistence.QuantityColumns;
import org.sunder.persistence.VersionedRow;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.StockPowder;

/** Row of a powder. */
@Entity
@Table(name = "powder")
class PowderRow extends VersionedRow {

    String name;

    @Nullable String nameInUse;

    @Nullable String lot;

    @Nullable String granulation;

    String forceValue;
    String forceUnit;
    String relativeUncertainty;

    @Nullable String note;

    @Nullable Instant archivedAt;

    @SuppressWarnings("NullAway.Init")
    protected PowderRow() {}

    @SuppressWarnings("NullAway.Init")
    PowderRow(UUID id, UUID flyerId, PowderDetails details, Instant now) {
        super(id, flyerId, now);
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
        PowderDetails details = new PowderDetails(
                name,
                lot,
                granulation,
                force,
                Decimals.find(relativeUncertainty).orElse(PowderDetails.NEW_LOT),
                note);
        return new StockPowder(getId(), details, createdAt(), archivedAt, version());
    }
}
