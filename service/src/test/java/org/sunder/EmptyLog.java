package org.sunder;

import java.util.List;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.JdbcTemplate;

/** Empties the log, so that what a browser meets does not depend on the tests before, and no large fleet is computed anew. */
@TestComponent
public class EmptyLog {

    private static final List<String> TABLES = List.of(
            "ground_test_void",
            "ground_test",
            "load_out",
            "setup",
            "joint",
            "airframe",
            "pull_test",
            "pin_batch",
            "powder",
            "idempotent_answer");

    private final JdbcTemplate jdbc;

    EmptyLog(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Takes every airframe, test and thing of the stock out; flyers and keys stay. */
    public void empty() {
        TABLES.forEach(table -> jdbc.update("delete from " + table));
        jdbc.update("update flyer set fleet_version = fleet_version + 1");
    }
}
