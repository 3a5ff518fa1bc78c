package org.sunder.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.sunder.exchange.GeneratedFleet;
import tools.jackson.databind.JsonNode;

/** Two instances on one database, and an embedded one beside them. */
@PostgresTest
class TwoInstancesTest {

    private static ConfigurableApplicationContext first;
    private static ConfigurableApplicationContext second;

    @BeforeAll
    static void start() {
        String url = PostgresServer.newDatabase();
        first = instance(url);
        second = instance(url);
    }

    @AfterAll
    static void stop() {
        first.close();
        second.close();
    }

    @Test
    void eachTellsWhatTheOtherTookIn() {
        Client one = client(first);
        Client other = client(second);
        String joint = one.joint();
        for (int i = 0; i < 3; i++) {
            // Both have a model of the fleet in memory, and each makes the other's stale in turn.
            assertThat(other.get(joint + "/next-charge").body())
                    .isEqualTo(one.get(joint + "/next-charge").body());
            Client writer = i % 2 == 0 ? one : other;
            Client reader = i % 2 == 0 ? other : one;
            JsonNode said = writer.post(joint + "/ground-tests", Samples.test("0.8" + i, "partial"))
                    .body()
                    .path("next");
            assertThat(reader.get(joint + "/next-charge").body()).isEqualTo(said);
            assertThat(said.path("basis").path("tests").asInt()).isEqualTo(i + 1);
        }
        String test = one.get(joint + "/ground-tests")
                .body()
                .path("items")
                .get(0)
                .path("id")
                .asString();
        JsonNode voided = one.post("/api/ground-tests/" + test + "/void", "{\"reason\":\"igniter\"}")
                .body();
        assertThat(other.get(joint + "/next-charge").body()).isEqualTo(voided.path("next"));
    }

    @Test
    void aReportSentToBothIsStoredOnce() {
        String joint = client(first).joint();
        String report = Samples.test("0.80", "none");
        List<CompletableFuture<Client.Answer>> sent = IntStream.range(0, 24)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> client(i % 2 == 0 ? first : second)
                                .post(joint + "/ground-tests", report, "Idempotency-Key", "both"),
                        work -> new Thread(work).start()))
                .toList();
        List<Integer> statuses = sent.stream()
                .map(CompletableFuture::join)
                .map(Client.Answer::status)
                .toList();
        assertThat(statuses).contains(201).allMatch(status -> status == 201 || status == 409);
        assertThat(client(second).get(joint + "/ground-tests").body().path("items"))
                .hasSize(1);
        var replay = client(second).post(joint + "/ground-tests", report, "Idempotency-Key", "both");
        var original = client(first).post(joint + "/ground-tests", report, "Idempotency-Key", "both");
        assertThat(replay.status()).isEqualTo(201);
        assertThat(replay.raw().body()).isEqualTo(original.raw().body());
        var other =
                client(second).post(joint + "/ground-tests", Samples.test("0.85", "none"), "Idempotency-Key", "both");
        assertThat(other.status()).isEqualTo(422);
    }

    @Test
    void differentReportsOfOneJointAtBothAreAllKeptOnce() {
        String joint = client(first).joint();
        List<CompletableFuture<Client.Answer>> sent = IntStream.range(0, 24)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> client(i % 2 == 0 ? first : second)
                                .post(
                                        joint + "/ground-tests",
                                        Samples.test("0." + (60 + i), "none"),
                                        "Idempotency-Key",
                                        "report " + i),
                        work -> new Thread(work).start()))
                .toList();
        assertThat(sent.stream().map(CompletableFuture::join).map(Client.Answer::status))
                .containsOnly(201);
        List<Double> charges = new ArrayList<>();
        client(second)
                .get(joint + "/ground-tests")
                .body()
                .path("items")
                .forEach(test -> charges.add(test.path("charge").path("value").asDouble()));
        assertThat(charges)
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, 24)
                        .mapToObj(i -> Double.valueOf("0." + (60 + i)))
                        .toList());
        assertThat(client(first).get(joint + "/next-charge").body())
                .isEqualTo(client(second).get(joint + "/next-charge").body());
    }

    @Test
    void ofEditsAtBothExactlyOneWins() {
        String airframe = client(first).airframe();
        List<CompletableFuture<Integer>> edits = IntStream.range(0, 20)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> client(i % 2 == 0 ? first : second)
                                .put(airframe, "{\"name\":\"edit " + i + "\"}", "If-Match", "\"v0\"")
                                .status(),
                        work -> new Thread(work).start()))
                .toList();
        assertThat(edits.stream().map(CompletableFuture::join))
                .containsOnlyOnce(200)
                .allMatch(status -> status == 200 || status == 412);
    }

    @Test
    void ofVoidsAtBothExactlyOneIsKept() {
        String joint = client(first).joint();
        String test = client(first)
                .post(joint + "/ground-tests", Samples.test("0.80", "none"))
                .header("Location");
        List<CompletableFuture<Integer>> voids = IntStream.range(0, 12)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> client(i % 2 == 0 ? first : second)
                                .post(test + "/void", "{\"reason\":\"igniter\"}")
                                .status(),
                        work -> new Thread(work).start()))
                .toList();
        assertThat(voids.stream().map(CompletableFuture::join))
                .containsOnlyOnce(200)
                .allMatch(status -> status == 200 || status == 409);
        assertThat(client(second).get(test).body().path("marks")).hasSize(1);
    }

    @Test
    void anEmbeddedDatabaseMovesHereByteForByte() {
        try (ConfigurableApplicationContext embedded = instance("jdbc:h2:mem:moving;DB_CLOSE_DELAY=-1");
                ConfigurableApplicationContext empty = instance(PostgresServer.newDatabase())) {
            new GeneratedFleet(client(embedded), 11).enter();
            String exported = client(embedded).get("/api/export").raw().body();
            assertThat(client(empty).post("/api/import", exported).status()).isEqualTo(200);
            assertThat(client(empty).get("/api/export").raw().body()).isEqualTo(exported);
        }
    }

    private static Client client(ConfigurableApplicationContext context) {
        return new Client(context.getEnvironment());
    }

    private static ConfigurableApplicationContext instance(String url) {
        return new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--spring.datasource.url=" + url);
    }
}
