package org.sunder.postgres;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.InThoroughRuns;
import org.sunder.durability.KillRounds;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** The service and its PostgreSQL killed in turn, again and again, under load. */
@PostgresTest
class KillRoundsOnPostgresTest {

    @TempDir
    Path folder;

    @Test
    @InThoroughRuns
    void eachAcknowledgedTestIsThereOnceAndTheAnswersFollowFromTheLog() throws Exception {
        try (PostgreSQLContainer server = PostgresServer.restartable()) {
            server.start();
            List<String> settings = List.of(
                    "--sunder.database-url=" + PostgresServer.url(server, server.getDatabaseName()),
                    "--spring.datasource.hikari.connection-timeout=1000");
            KillRounds.run(folder, settings, new InContainer(server));
        }
    }

    private record InContainer(PostgreSQLContainer server) implements KillRounds.Database {

        @Override
        public void kill() {
            server.getDockerClient().killContainerCmd(server.getContainerId()).exec();
        }

        @Override
        public void start() {
            server.getDockerClient().startContainerCmd(server.getContainerId()).exec();
        }
    }
}
