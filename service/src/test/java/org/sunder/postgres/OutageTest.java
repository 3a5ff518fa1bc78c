package org.sunder.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** PostgreSQL killed under load: 503 meanwhile, back without a restart, nothing acknowledged lost. */
@PostgresTest
class OutageTest {

    private static final Duration BACK_WITHIN = Duration.ofSeconds(10);

    @Test
    void goesOnAfterTheDatabaseWasKilled() throws Exception {
        try (PostgreSQLContainer server = PostgresServer.restartable()) {
            server.start();
            String url = PostgresServer.url(server, server.getDatabaseName());
            try (var service = new SpringApplicationBuilder(SunderApplication.class)
                    .run(
                            "--server.port=0",
                            "--spring.datasource.url=" + url,
                            "--spring.datasource.hikari.connection-timeout=2000")) {
                survives(server, new Client(service.getEnvironment()));
            }
        }
    }

    private static void survives(PostgreSQLContainer server, Client client) throws InterruptedException {
        List<String> acknowledged = new ArrayList<>();
        Thread killer = new Thread(() -> server.getDockerClient()
                .killContainerCmd(server.getContainerId())
                .exec());
        Client.Answer answer = enter(client, acknowledged);
        for (int i = 0; answer.status() == 201 && i < 5000; i++) {
            if (i == 20) {
                killer.start();
            }
            answer = enter(client, acknowledged);
        }
        killer.join();
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(503);
        assertThat(answer.header("Retry-After")).isNotEmpty();
        assertThat(client.get("/readyz").status()).isEqualTo(503);
        assertThat(client.get("/livez").status()).isEqualTo(200);
        server.getDockerClient().startContainerCmd(server.getContainerId()).exec();
        Instant started = Instant.now();
        while (client.get("/readyz").status() != 200) {
            assertThat(Duration.between(started, Instant.now())).isLessThan(BACK_WITHIN);
            Thread.sleep(200);
        }
        for (String path : acknowledged) {
            assertThat(client.get(path).status()).as(path).isEqualTo(200);
        }
        assertThat(enter(client, acknowledged).status()).isEqualTo(201);
    }

    private static Client.Answer enter(Client client, List<String> acknowledged) {
        Client.Answer answer = client.post("/api/airframes", Samples.AIRFRAME);
        if (answer.status() == 201) {
            acknowledged.add(answer.header("Location"));
        }
        return answer;
    }
}
