package org.sunder.airframe.persistence;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.LoadOutSheet;
import org.sunder.airframe.LoadOutStore;
import org.sunder.persistence.RowIds;

/** Load-outs in a table. */
@Repository
@Transactional
class JpaLoadOutStore implements LoadOutStore {

    private final LoadOutRows rows;
    private final SheetDocuments documents;
    private final Clock clock;

    JpaLoadOutStore(LoadOutRows rows, SheetDocuments documents, Clock clock) {
        this.rows = rows;
        this.documents = documents;
        this.clock = clock;
    }

    @Override
    public InstalledLoadOut add(UUID flyer, UUID airframeId, LoadOutSheet sheet) {
        return loadOut(rows.saveAndFlush(new LoadOutRow(
                RowIds.next(),
                flyer,
                airframeId,
                documents.write(sheet),
                clock.instant().truncatedTo(ChronoUnit.MICROS))));
    }

    @Override
    public InstalledLoadOut change(UUID flyer, UUID id, LoadOutSheet sheet) {
        LoadOutRow row = rows.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.document = documents.write(sheet);
        return loadOut(rows.saveAndFlush(row));
    }

    @Override
    public void remove(UUID flyer, UUID id) {
        rows.delete(rows.findByFlyerIdAndId(flyer, id).orElseThrow());
        rows.flush();
    }

    @Override
    public Optional<InstalledLoadOut> find(UUID flyer, UUID id) {
        return rows.findByFlyerIdAndId(flyer, id).map(this::loadOut);
    }

    @Override
    public List<InstalledLoadOut> of(UUID flyer, UUID airframeId) {
        return rows.findByFlyerIdAndAirframeIdOrderById(flyer, airframeId).stream()
                .map(this::loadOut)
                .toList();
    }

    private InstalledLoadOut loadOut(LoadOutRow row) {
        return new InstalledLoadOut(
                row.getId(),
                row.airframeId,
                documents
                        .find(row.document, LoadOutSheet.class)
                        .orElseGet(() -> LoadOutSheet.unreadable("This load-out cannot be read as it is stored.")),
                row.createdAt(),
                row.version());
    }
}
