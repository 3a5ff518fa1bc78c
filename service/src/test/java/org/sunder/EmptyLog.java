package org.sunder;

import java.util.List;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Empties the log, so that what a browser meets does not depend on the tests before, and no large fleet is computed anew. */
@TestComponent
public class EmptyLog {

    private static final List<String> TABLES = List.of(
            "photo",
            "ground_test_void",
            "ground_test",
            "load_out",
            "setup",
            "joint",
            "airframe",
            "pull_test",
            "pin_batch",
            "powder",
            "idempotent_answer",
            "pool_share",
            "pool_snapshot");

    private final JdbcTemplate jdbc;

    EmptyLog(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Each class begins with an empty log, whichever came before: what it computes does not grow with the run. */
    public static final class BeforeEachClass implements TestExecutionListener {

        @Override
        public void beforeTestClass(TestContext context) {
            context.getApplicationContext().getBean(EmptyLog.class).empty();
        }
    }

    /** Takes every airframe, test and thing of the stock out; flyers and keys stay. */
    public void empty() {
        TABLES.forEach(table -> jdbc.update("delete from " + table));
        jdbc.update("update flyer set fleet_version = fleet_version + 1, pool_sharing = false, pool_using = true,"
                + " pool_snapshot = null, filmed_percent = null");
    }
}
