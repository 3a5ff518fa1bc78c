package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/** A page of a long log or list is read by its index, on both databases. */
@ServiceTest
class LogPageTest {

    private static final int ROWS = 20_000;
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2020-01-01T00:00:00Z");
    private static final String PAGE =
            "select t.id, t.notes from ground_test t where t.flyer_id = '%s' and t.joint_id = '%s'"
                    + " and t.occasion = 'GROUND' and t.fired_at <= timestamp with time zone '9999-01-01 00:00:00+00'"
                    + " and (t.fired_at < timestamp with time zone '9999-01-01 00:00:00+00' or t.id < '%s')"
                    + " order by t.flyer_id, t.joint_id, t.occasion, t.fired_at desc, t.id desc fetch first 51 rows only";

    @Autowired
    JdbcTemplate jdbc;

    private static final String AIRFRAMES = "select a.id, a.name from airframe a where a.flyer_id = '%s'"
            + " and a.archived_at is null and a.created_at <= timestamp with time zone '9999-01-01 00:00:00+00'"
            + " and (a.created_at < timestamp with time zone '9999-01-01 00:00:00+00' or a.id < '%s')"
            + " order by a.flyer_id, a.created_at desc, a.id desc fetch first 51 rows only";

    @Test
    void theFirstPageOfAirframesReadsNoMoreThanItShows() {
        UUID flyer = UUID.randomUUID();
        jdbc.update("insert into flyer (id, name, created_at) values (?, 'many', current_timestamp)", flyer);
        List<Object[]> rows = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            rows.add(new Object[] {flyer, UUID.randomUUID(), FIRST.plusMinutes(i)});
        }
        jdbc.batchUpdate(
                "insert into airframe (flyer_id, id, name, units, created_at, version)"
                        + " values (?, ?, 'a', 'METRIC', ?, 0)",
                rows);
        readsByIndex("airframe", "airframe_newest", AIRFRAMES.formatted(flyer, new UUID(-1, -1)));
        jdbc.update("delete from airframe where flyer_id = ?", flyer);
    }

    @Test
    void theFirstPageReadsNoMoreThanItShows() {
        UUID flyer = UUID.randomUUID();
        UUID airframe = UUID.randomUUID();
        UUID joint = UUID.randomUUID();
        UUID setup = UUID.randomUUID();
        jdbc.update("insert into flyer (id, name, created_at) values (?, 'long', current_timestamp)", flyer);
        jdbc.update(
                "insert into airframe (flyer_id, id, name, units, created_at, version)"
                        + " values (?, ?, 'a', 'METRIC', current_timestamp, 0)",
                flyer,
                airframe);
        jdbc.update("insert into joint values (?, ?, ?, 'j', 'MAIN', 1, current_timestamp, 0)", flyer, joint, airframe);
        jdbc.update("insert into setup values (?, ?, ?, 1, '{}', current_timestamp)", flyer, setup, joint);
        List<Object[]> rows = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            rows.add(new Object[] {flyer, UUID.randomUUID(), joint, setup, FIRST.plusMinutes(i)});
        }
        jdbc.batchUpdate(
                "insert into ground_test (flyer_id, id, occasion, joint_id, setup_id, setup_revision, charge_value,"
                        + " charge_unit, outcome, damaged, fired_at, fired_offset_seconds, received_at,"
                        + " predicted_separated, predicted_partial, predicted_none, factor_median, factor_low,"
                        + " factor_high) values (?, ?, 'GROUND', ?, ?, 1, '1', 'g', 'NONE', false,"
                        + " ?, 0,"
                        + " current_timestamp, 0, 0, 1, 1, 1, 1)",
                rows);
        String page = PAGE.formatted(flyer, joint, new UUID(-1, -1));
        readsByIndex("ground_test", "ground_test_by_joint", page);
        jdbc.update("delete from ground_test where flyer_id = ?", flyer);
    }

    private void readsByIndex(String table, String index, String page) {
        if (TestDatabase.onPostgres()) {
            jdbc.execute("analyze " + table);
            String plan = String.join("\n", jdbc.queryForList("explain (analyze) " + page, String.class));
            assertThat(plan).contains(index).doesNotContain("Seq Scan").doesNotContain("Sort");
        } else {
            String plan = String.join("\n", jdbc.queryForList("explain analyze " + page, String.class));
            int scanned = Integer.parseInt(plan.replaceAll("(?s).*scanCount: (\\d+).*", "$1"));
            assertThat(scanned).as(plan).isLessThan(60);
        }
    }
}
