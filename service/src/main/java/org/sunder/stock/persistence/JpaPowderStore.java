package org.sunder.stock.persistence;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.persistence.RowIds;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.PowderStore;
import org.sunder.stock.Powders;
import org.sunder.stock.StockPowder;
import org.sunder.web.Cursor;

/** Powders in tables. */
@Repository
@Transactional
class JpaPowderStore implements PowderStore {

    private final PowderRows powders;
    private final Clock clock;

    JpaPowderStore(PowderRows powders, Clock clock) {
        this.powders = powders;
        this.clock = clock;
    }

    @Override
    public StockPowder add(UUID flyer, PowderDetails details) {
        return save(new PowderRow(RowIds.next(), flyer, details, now()));
    }

    @Override
    public StockPowder change(UUID flyer, UUID id, PowderDetails details) {
        PowderRow row = powders.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.describe(details);
        return save(row);
    }

    @Override
    public void archive(UUID flyer, UUID id) {
        PowderRow row = powders.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.archive(now());
        powders.saveAndFlush(row);
    }

    @Override
    public Optional<StockPowder> find(UUID flyer, UUID id) {
        return powders.findByFlyerIdAndId(flyer, id).map(PowderRow::powder);
    }

    @Override
    public Optional<StockPowder> findByName(UUID flyer, String name) {
        return powders.findByFlyerIdAndNameInUse(flyer, name).map(PowderRow::powder);
    }

    @Override
    public List<StockPowder> after(UUID flyer, Cursor cursor, int limit) {
        return powders.after(flyer, cursor.at(), cursor.id(), Limit.of(limit)).stream()
                .map(PowderRow::powder)
                .toList();
    }

    private StockPowder save(PowderRow row) {
        try {
            return powders.saveAndFlush(row).powder();
        } catch (DataIntegrityViolationException e) {
            // The name was free when it was checked; another request took it first.
            throw Powders.nameTaken(row.name);
        }
    }

    /** Microseconds: what both databases keep. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
