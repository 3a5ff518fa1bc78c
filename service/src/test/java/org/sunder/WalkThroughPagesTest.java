package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.access.CurrentFlyer;

/** A walk over many pages meets every row once, whatever is entered meanwhile. */
@ServiceTest
class WalkThroughPagesTest {

    private static final int ROWS = 10_000;
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2020-01-01T00:00:00Z");

    @Autowired
    Client client;

    @Autowired
    JdbcTemplate jdbc;

    @Autowired
    EmptyLog emptyLog;

    @AfterEach
    void away() {
        emptyLog.empty();
    }

    @Test
    void aLogOfTenThousandTests() {
        String airframe = client.airframe();
        UUID joint = client.post(airframe + "/joints", Samples.JOINT).id();
        UUID setup = jdbc.queryForObject("select id from setup where joint_id = ?", UUID.class, joint);
        Set<String> entered = tests(joint, setup, ROWS, 0);
        // Many share a time, so that the id must decide; the new ones come before, between and after.
        int[] more = {0};
        assertWalkMeets(
                entered, "/api/joints/" + joint + "/ground-tests", () -> tests(joint, setup, 20, 37 * more[0]++));
    }

    @Test
    void tenThousandAirframes() {
        Set<String> entered = new HashSet<>();
        List<Object[]> rows = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            UUID id = UUID.randomUUID();
            entered.add(id.toString());
            rows.add(new Object[] {CurrentFlyer.LOCAL, id, FIRST.plusMinutes(i / 7)});
        }
        jdbc.batchUpdate(
                "insert into airframe (flyer_id, id, name, units, created_at, version) values (?, ?, 'a', 'METRIC', ?, 0)",
                rows);
        assertWalkMeets(entered, "/api/airframes", () -> {
            client.airframe();
            jdbc.update(
                    "insert into airframe (flyer_id, id, name, units, created_at, version)"
                            + " values (?, ?, 'a', 'METRIC', ?, 0)",
                    CurrentFlyer.LOCAL,
                    UUID.randomUUID(),
                    FIRST.plusMinutes(ROWS / 14));
        });
    }

    private void assertWalkMeets(Set<String> entered, String path, Runnable meanwhile) {
        Set<String> seen = new HashSet<>();
        String next = "";
        int pages = 0;
        do {
            var page = client.get(path + "?limit=200" + (next.isEmpty() ? "" : "&cursor=" + next));
            assertThat(page.body().path("items")).hasSizeLessThanOrEqualTo(200);
            page.body().path("items").forEach(item -> {
                String id = item.path("id").asString();
                assertThat(seen.add(id)).as("met twice: " + id).isTrue();
            });
            next = page.body().path("next").asString("");
            meanwhile.run();
            pages++;
        } while (!next.isEmpty());
        assertThat(pages).isGreaterThanOrEqualTo(ROWS / 200);
        assertThat(seen).containsAll(entered);
    }

    private Set<String> tests(UUID joint, UUID setup, int count, int from) {
        Set<String> entered = new HashSet<>();
        List<Object[]> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            UUID id = UUID.randomUUID();
            entered.add(id.toString());
            rows.add(new Object[] {CurrentFlyer.LOCAL, id, joint, setup, FIRST.plusMinutes((from + i) / 7)});
        }
        jdbc.batchUpdate(
                "insert into ground_test (flyer_id, id, occasion, joint_id, setup_id, setup_revision, charge_value,"
                        + " charge_unit, outcome, damaged, fired_at, fired_offset_seconds, received_at,"
                        + " predicted_separated, predicted_partial, predicted_none, factor_median, factor_low,"
                        + " factor_high) values (?, ?, 'GROUND', ?, ?, 1, '1', 'g', 'NONE', false,"
                        + " ?, 0, current_timestamp, 0, 0, 1, 1, 1, 1)",
                rows);
        return entered;
    }
}
