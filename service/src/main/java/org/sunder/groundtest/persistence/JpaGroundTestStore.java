package org.sunder.groundtest.persistence;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTestStore;
import org.sunder.groundtest.NewTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.VoidMark;
import org.sunder.http.Cursor;

/** The log in tables. */
@Repository
@Transactional
class JpaGroundTestStore implements GroundTestStore {

    private final GroundTestRows tests;
    private final VoidRows voids;
    private final Clock clock;

    JpaGroundTestStore(GroundTestRows tests, VoidRows voids, Clock clock) {
        this.tests = tests;
        this.voids = voids;
        this.clock = clock;
    }

    @Override
    public GroundTest add(UUID flyer, NewTest test) {
        return tests.saveAndFlush(new GroundTestRow(flyer, test, clock.instant().truncatedTo(ChronoUnit.MICROS)))
                .test(List.of());
    }

    @Override
    public void mark(UUID flyer, UUID testId, VoidMark mark) {
        int sequence = voids.findByFlyerIdAndTestIdInOrderByTestIdAscSequenceAsc(flyer, List.of(testId))
                .size();
        voids.saveAndFlush(new VoidRow(flyer, testId, sequence, mark));
    }

    @Override
    public Optional<GroundTest> find(UUID flyer, UUID id) {
        return tests.findByFlyerIdAndId(flyer, id)
                .map(row -> withMarks(flyer, List.of(row)).get(0));
    }

    @Override
    public List<GroundTest> page(UUID flyer, UUID jointId, Occasion occasion, Cursor cursor, int limit) {
        return withMarks(flyer, tests.after(flyer, jointId, occasion, cursor.at(), cursor.id(), Limit.of(limit)));
    }

    @Override
    public List<GroundTest> all(UUID flyer) {
        Map<UUID, List<VoidMark>> marks = byTest(voids.findByFlyerIdOrderByTestIdAscSequenceAsc(flyer));
        return tests.findByFlyerIdOrderByFiredAtAscIdAsc(flyer).stream()
                .map(row -> row.test(marks.getOrDefault(row.getId(), List.of())))
                .toList();
    }

    private List<GroundTest> withMarks(UUID flyer, List<GroundTestRow> rows) {
        List<UUID> ids = rows.stream().map(row -> row.getId()).toList();
        Map<UUID, List<VoidMark>> marks = byTest(voids.findByFlyerIdAndTestIdInOrderByTestIdAscSequenceAsc(flyer, ids));
        return rows.stream()
                .map(row -> row.test(marks.getOrDefault(row.getId(), List.of())))
                .toList();
    }

    private static Map<UUID, List<VoidMark>> byTest(List<VoidRow> rows) {
        return rows.stream().collect(groupingBy(row -> row.testId, mapping(VoidRow::mark, toList())));
    }
}
