package org.sunder.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.process.StartedService;

/** Two instances that start at once on one empty database: one makes the tables and the first key, and both answer. */
@PostgresTest
class TwoStartsTest {

    @TempDir
    Path folder;

    @Test
    void bothComeUpAndTheTablesAndTheFirstKeyAreMadeOnce() throws Exception {
        String url = PostgresServer.newDatabase();
        try (StartedService one = start("one", url);
                StartedService other = start("other", url)) {
            assertThat(one.port()).isNotEqualTo(other.port());
            try (Connection database = DriverManager.getConnection(url)) {
                assertThat(count(database, "flyway_schema_history where success and version is not null"))
                        .isEqualTo(count(database, "(select distinct version from flyway_schema_history) as known"))
                        .isPositive();
                one.stop();
                other.stop();
                one.exitValue();
                other.exitValue();
                assertThat(count(database, "access_key where scope = 'ADMIN'")).isEqualTo(1);
            }
        }
    }

    private StartedService start(String name, String url) throws Exception {
        return new StartedService(
                Files.createDirectory(folder.resolve(name)),
                "--sunder.database-url=" + url,
                "--sunder.access.keys=true");
    }

    private static int count(Connection database, String from) throws Exception {
        try (ResultSet row = database.createStatement().executeQuery("select count(*) from " + from)) {
            row.next();
            return row.getInt(1);
        }
    }
}
