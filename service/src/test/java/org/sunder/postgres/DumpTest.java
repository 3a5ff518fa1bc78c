package org.sunder.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.sunder.exchange.GeneratedFleet;
import org.testcontainers.containers.Container;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** The commands of the handbook copy a PostgreSQL database and bring it back, over what is there and into an empty one. */
@PostgresTest
class DumpTest {

    private static final Path HANDBOOK = Path.of("docs", "club-server.md");

    @Test
    void theCommandsOfTheHandbookGiveBackTheSameExport() throws Exception {
        try (PostgreSQLContainer server = PostgresServer.container()) {
            server.start();
            String database = server.getDatabaseName();
            String exported;
            try (ConfigurableApplicationContext service = start(server, database)) {
                Client client = client(service);
                new GeneratedFleet(client, 31).enter();
                exported = export(client);
                run(server, "pg_dump", database);
                client.airframe();
                assertThat(export(client)).isNotEqualTo(exported);
            }
            run(server, "pg_restore", database);
            assertHolds(server, database, exported);
            shell(server, database, "psql \"$DATABASE\" -c 'create database elsewhere'");
            run(server, "pg_restore", "elsewhere");
            assertHolds(server, "elsewhere", exported);
        }
    }

    private static void assertHolds(PostgreSQLContainer server, String database, String exported) {
        try (ConfigurableApplicationContext service = start(server, database)) {
            Client client = client(service);
            assertThat(export(client)).isEqualTo(exported);
            assertThat(client.post("/api/airframes", Samples.AIRFRAME).status()).isEqualTo(201);
        }
    }

    /** Runs the line of the handbook that begins with a command. */
    private static void run(PostgreSQLContainer server, String command, String database)
            throws IOException, InterruptedException {
        String line = Files.readAllLines(HANDBOOK).stream()
                .filter(each -> each.startsWith(command + " "))
                .findFirst()
                .orElseThrow();
        shell(server, database, line);
    }

    private static void shell(PostgreSQLContainer server, String database, String line)
            throws IOException, InterruptedException {
        String address = "postgresql://" + server.getUsername() + ":" + server.getPassword() + "@localhost/" + database;
        Container.ExecResult done =
                server.execInContainer("bash", "-c", "cd /tmp && export DATABASE='" + address + "' && " + line);
        assertThat(done.getExitCode()).as(line + "\n" + done.getStderr()).isZero();
    }

    private static String export(Client client) {
        return client.get("/api/export").raw().body();
    }

    private static Client client(ConfigurableApplicationContext service) {
        return new Client(service.getEnvironment());
    }

    private static ConfigurableApplicationContext start(PostgreSQLContainer server, String database) {
        return new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--spring.datasource.url=" + PostgresServer.url(server, database));
    }
}
