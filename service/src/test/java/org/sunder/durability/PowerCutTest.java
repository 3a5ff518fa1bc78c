package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import tools.jackson.databind.json.JsonMapper;

/** What was acknowledged is on the disk, not only in its cache. */
class PowerCutTest {

    private static final int WRITES = 12;

    @TempDir
    Path folder;

    @BeforeAll
    static void register() {
        UnsyncedFiles.register();
    }

    @Test
    void acknowledgedAirframesSurviveAPowerCut() throws Exception {
        Path live = folder.resolve("live");
        List<UUID> acknowledged = new ArrayList<>();
        try (ConfigurableApplicationContext service = new SpringApplicationBuilder(SunderApplication.class)
                .run(
                        "--server.port=0",
                        "--spring.datasource.url=jdbc:h2:unsynced:" + live.resolve("sunder") + ";WRITE_DELAY=0")) {
            String base = "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port");
            for (int i = 0; i < WRITES; i++) {
                acknowledged.add(post(base + "/api/airframes", Samples.AIRFRAME));
            }
            UnsyncedFiles.afterPowerCut(live, folder.resolve("after"));
        }
        assertThat(airframesIn(folder.resolve("after"))).containsAll(acknowledged);
    }

    @Test
    void aCommitAloneWouldBeLost() throws Exception {
        Path live = folder.resolve("live");
        String url = "jdbc:h2:unsynced:" + live.resolve("sunder") + ";WRITE_DELAY=0";
        try (Connection connection = DriverManager.getConnection(url, "sunder", "");
                Statement statement = connection.createStatement()) {
            statement.execute("create table airframe (id uuid primary key)");
            statement.execute("checkpoint sync");
            UUID committed = UUID.randomUUID();
            statement.execute("insert into airframe values ('" + committed + "')");
            UnsyncedFiles.afterPowerCut(live, folder.resolve("after"));
            assertThat(airframesIn(folder.resolve("after"))).doesNotContain(committed);
        }
    }

    private static UUID post(String url, String body) throws Exception {
        var request = java.net.http.HttpRequest.newBuilder(java.net.URI.create(url))
                .header("Content-Type", "application/json")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body))
                .build();
        var answer = java.net.http.HttpClient.newHttpClient()
                .send(request, java.net.http.HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(201);
        return UUID.fromString(
                new JsonMapper().readTree(answer.body()).path("id").asString());
    }

    private static Set<UUID> airframesIn(Path folder) throws Exception {
        Set<UUID> found = new HashSet<>();
        String url = "jdbc:h2:file:" + folder.resolve("sunder");
        try (Connection connection = DriverManager.getConnection(url, "sunder", "");
                ResultSet rows = connection.createStatement().executeQuery("select id from airframe")) {
            while (rows.next()) {
                found.add(rows.getObject(1, UUID.class));
            }
        }
        return found;
    }
}
