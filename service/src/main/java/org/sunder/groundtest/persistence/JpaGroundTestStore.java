package org.sunder.groundtest.persistence;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTestStore;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.VoidMark;
import org.sunder.web.Cursor;

/** The log in tables. */
@Repository
@Transactional
class JpaGroundTestStore implements GroundTestStore {

    private final GroundTestRows tests;
    private final VoidRows voids;

    JpaGroundTestStore(GroundTestRows tests, VoidRows voids) {
        this.tests = tests;
        this.voids = voids;
    }

    @Override
    public void add(UUID flyer, GroundTest test) {
        tests.saveAndFlush(new GroundTestRow(flyer, test));
    }

    @Override
    public void mark(UUID flyer, GroundTest marked) {
        int newest = marked.marks().size() - 1;
        voids.saveAndFlush(
                new VoidRow(flyer, marked.id(), newest, marked.marks().get(newest)));
    }

    @Override
    public Optional<GroundTest> find(UUID flyer, UUID id) {
        return tests.findByFlyerIdAndId(flyer, id)
                .map(row -> joined(List.of(row), voids.findByFlyerIdAndTestIdOrderBySequenceAsc(flyer, id))
                        .get(0));
    }

    @Override
    public List<GroundTest> page(UUID flyer, UUID jointId, Occasion occasion, Cursor cursor, int limit) {
        List<GroundTestRow> rows =
                tests.after(flyer, jointId, occasion.name(), cursor.at(), cursor.id(), Limit.of(limit));
        if (rows.isEmpty()) {
            return List.of();
        }
        Instant newest = rows.get(0).firedAt;
        Instant oldest = rows.get(rows.size() - 1).firedAt;
        return joined(rows, voids.ofPage(flyer, jointId, occasion.name(), oldest, newest));
    }

    @Override
    public List<GroundTest> of(UUID flyer, Collection<UUID> joints) {
        return joined(
                tests.findByFlyerIdAndJointIdInOrderByFiredAtAscIdAsc(flyer, joints), voids.ofJoints(flyer, joints));
    }

    @Override
    public List<GroundTest> all(UUID flyer) {
        return joined(
                tests.findByFlyerIdOrderByFiredAtAscIdAsc(flyer),
                voids.findByFlyerIdOrderByTestIdAscSequenceAsc(flyer));
    }

    private static List<GroundTest> joined(List<GroundTestRow> rows, List<VoidRow> voids) {
        Map<UUID, List<VoidMark>> marks = byTest(voids);
        return rows.stream()
                .map(row -> row.test(marks.getOrDefault(row.getId(), List.of())))
                .toList();
    }

    private static Map<UUID, List<VoidMark>> byTest(List<VoidRow> rows) {
        return rows.stream().collect(groupingBy(row -> row.testId, mapping(VoidRow::mark, toList())));
    }
}
