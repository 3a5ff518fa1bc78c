package org.sunder.stock.persistence;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.engine.quantity.Force;
import org.sunder.persistence.RowIds;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatchDetails;
import org.sunder.stock.PinBatchStore;
import org.sunder.stock.PullTest;
import org.sunder.web.Cursor;

/** Pin batches and their pull tests in tables. */
@Repository
@Transactional
class JpaPinBatchStore implements PinBatchStore {

    private final PinBatchRows batches;
    private final PullTestRows pulls;
    private final EntityManager entities;
    private final Clock clock;

    JpaPinBatchStore(PinBatchRows batches, PullTestRows pulls, EntityManager entities, Clock clock) {
        this.entities = entities;
        this.batches = batches;
        this.pulls = pulls;
        this.clock = clock;
    }

    @Override
    public PinBatch add(UUID flyer, PinBatchDetails details) {
        return batches.saveAndFlush(new PinBatchRow(RowIds.next(), flyer, details, now()))
                .batch(List.of());
    }

    @Override
    public PinBatch change(UUID flyer, UUID id, PinBatchDetails details) {
        PinBatchRow row = get(flyer, id);
        row.describe(details);
        return withPulls(flyer, List.of(batches.saveAndFlush(row))).get(0);
    }

    @Override
    public PinBatch pull(UUID flyer, UUID id, Force force) {
        PinBatchRow row = get(flyer, id);
        pulls.save(new PullTestRow(flyer, id, row.pulls, force, now()));
        row.pulls++;
        return withPulls(flyer, List.of(batches.saveAndFlush(row))).get(0);
    }

    @Override
    public PinBatch leaveOut(UUID flyer, UUID id, int place, boolean leftOut) {
        PinBatchRow row = get(flyer, id);
        entities.lock(row, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
        pulls.findByFlyerIdAndBatchIdAndSequence(flyer, id, place).orElseThrow().leftOut = leftOut;
        pulls.flush();
        return withPulls(flyer, List.of(row)).get(0);
    }

    @Override
    public PinBatch removePull(UUID flyer, UUID id, int place) {
        PinBatchRow row = get(flyer, id);
        pulls.delete(pulls.findByFlyerIdAndBatchIdAndSequence(flyer, id, place).orElseThrow());
        pulls.flush();
        for (int after = place + 1; after < row.pulls; after++) { // one by one: no two may ever have the same place
            pulls.findByFlyerIdAndBatchIdAndSequence(flyer, id, after).orElseThrow().sequence--;
            pulls.flush();
        }
        row.pulls--;
        return withPulls(flyer, List.of(batches.saveAndFlush(row))).get(0);
    }

    @Override
    public void archive(UUID flyer, UUID id) {
        PinBatchRow row = get(flyer, id);
        row.archivedAt = now();
        batches.saveAndFlush(row);
    }

    @Override
    public Optional<PinBatch> find(UUID flyer, UUID id) {
        return batches.findByFlyerIdAndId(flyer, id)
                .map(row -> withPulls(flyer, List.of(row)).get(0));
    }

    @Override
    public List<PinBatch> after(UUID flyer, Cursor cursor, int limit) {
        return withPulls(flyer, batches.after(flyer, cursor.at(), cursor.id(), Limit.of(limit)));
    }

    private PinBatchRow get(UUID flyer, UUID id) {
        return batches.findByFlyerIdAndId(flyer, id).orElseThrow();
    }

    private List<PinBatch> withPulls(UUID flyer, List<PinBatchRow> rows) {
        List<UUID> ids = rows.stream().map(row -> row.getId()).toList();
        Map<UUID, List<PullTest>> tests =
                pulls.findByFlyerIdAndBatchIdInOrderByBatchIdAscSequenceAsc(flyer, ids).stream()
                        .collect(groupingBy(row -> row.batchId, mapping(PullTestRow::test, toList())));
        return rows.stream()
                .map(row -> row.batch(tests.getOrDefault(row.getId(), List.of())))
                .toList();
    }

    /** Microseconds: what both databases keep. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
