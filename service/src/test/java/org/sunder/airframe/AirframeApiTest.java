package org.sunder.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;

@ServiceTest
class AirframeApiTest {

    @Autowired
    Client client;

    @Autowired
    EntityManagerFactory factory;

    @Test
    void createsAndReadsBackWithTheSameDigits() {
        var made = client.post("/api/airframes", Samples.AIRFRAME);
        assertThat(made.status()).isEqualTo(201);
        assertThat(made.header("ETag")).isEqualTo("\"v0\"");
        var read = client.get(made.header("Location"));
        assertThat(read.status()).isEqualTo(200);
        assertThat(read.raw().body()).contains("{\"value\":98.00,\"unit\":\"mm\"}");
        assertThat(read.body()).isEqualTo(made.body());
        assertThat(made.id().version()).isEqualTo(7);
    }

    @Test
    void anUnchangedAirframeIsNotSentAgain() {
        var made = client.post("/api/airframes", Samples.AIRFRAME);
        var again = client.get(made.header("Location"), "If-None-Match", made.header("ETag"));
        assertThat(again.status()).isEqualTo(304);
    }

    @Test
    void changesOnlyTheVersionThatWasRead() {
        var made = client.post("/api/airframes", Samples.AIRFRAME);
        String path = made.header("Location");
        String other = "{\"name\":\"Bittern II\",\"units\":\"us\"}";
        assertThat(client.put(path, other).status()).isEqualTo(428);
        var changed = client.put(path, other, "If-Match", "\"v0\"");
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.header("ETag")).isEqualTo("\"v1\"");
        assertThat(changed.body().path("units").asString()).isEqualTo("us");
        assertThat(client.put(path, other, "If-Match", "\"v0\"").status()).isEqualTo(412);
    }

    @Test
    void aListOfJointsIsReadWithAsManyStatementsAsOneJoint() {
        Statistics statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        String airframe = client.airframe();
        client.joint(airframe);
        statistics.clear();
        client.get(airframe + "/joints");
        long one = statistics.getPrepareStatementCount();
        for (int i = 0; i < 4; i++) {
            client.joint(airframe);
        }
        statistics.clear();
        assertThat(client.get(airframe + "/joints").body().path("items")).hasSize(5);
        assertThat(statistics.getPrepareStatementCount()).isEqualTo(one).isLessThanOrEqualTo(3);
    }

    @Test
    void archivesButKeepsReadable() {
        var made = client.post("/api/airframes", Samples.AIRFRAME);
        String path = made.header("Location");
        assertThat(client.delete(path).status()).isEqualTo(428);
        assertThat(client.delete(path, "If-Match", "\"v0\"").status()).isEqualTo(204);
        assertThat(client.get(path).body().path("archivedAt").asString()).isNotEmpty();
        assertThat(client.post(path + "/joints", Samples.JOINT).status()).isEqualTo(409);
        assertThat(client.get("/api/airframes?limit=200").raw().body())
                .doesNotContain(made.id().toString());
    }

    @Test
    void bringsBackWhatWasArchived() {
        var made = client.post("/api/airframes", Samples.AIRFRAME);
        String path = made.header("Location");
        client.delete(path, "If-Match", "\"v0\"");
        var back = client.post(path + "/bring-back", "");
        assertThat(back.status()).isEqualTo(200);
        assertThat(back.body()).isEqualTo(made.body());
        assertThat(back.header("ETag")).isEqualTo("\"v2\"");
        var again = client.post(path + "/bring-back", "");
        assertThat(again.header("ETag")).as("asked again").isEqualTo("\"v2\"");
        assertThat(client.post(path + "/joints", Samples.JOINT).status()).isEqualTo(201);
        assertThat(client.get("/api/airframes?limit=200").raw().body())
                .contains(made.id().toString());
    }

    @Test
    void whatIsPutAwayHasAListOfItsOwn() {
        var used = client.post("/api/airframes", Samples.AIRFRAME);
        List<String> away = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            var made = client.post("/api/airframes", Samples.AIRFRAME);
            client.delete(made.header("Location"), "If-Match", "*");
            away.add(0, made.id().toString());
        }
        List<String> seen = new ArrayList<>();
        String path = "/api/airframes?putAway=true&limit=2";
        do {
            var page = client.get(path);
            page.body().path("items").forEach(item -> {
                assertThat(item.path("archivedAt").asString()).isNotEmpty();
                seen.add(item.path("id").asString());
            });
            path = page.header("Link").replaceAll(".*<https?://[^/]*([^>]*)>.*", "$1");
        } while (!path.isEmpty());
        assertThat(seen).startsWith(away.toArray(String[]::new)).doesNotHaveDuplicates();
        assertThat(seen).doesNotContain(used.id().toString());
        assertThat(client.get("/api/airframes?putAway=false&limit=200").raw().body())
                .contains(used.id().toString())
                .doesNotContain(away.get(0));
        assertThat(client.get("/api/airframes?putAway=perhaps").status()).isEqualTo(400);
    }

    @Test
    void pagesWalkTheWholeListOnce() {
        for (int i = 0; i < 5; i++) {
            client.post("/api/airframes", "{\"name\":\"page " + i + "\"}");
        }
        var seen = new java.util.LinkedHashSet<String>();
        String path = "/api/airframes?limit=2";
        while (path != null) {
            var page = client.get(path);
            page.body()
                    .path("items")
                    .forEach(item ->
                            assertThat(seen.add(item.path("id").asString())).isTrue());
            String next = page.body().path("next").asString("");
            assertThat(page.header("Link").isEmpty()).isEqualTo(next.isEmpty());
            path = next.isEmpty() ? null : "/api/airframes?limit=2&cursor=" + next;
        }
        assertThat(seen.size()).isGreaterThanOrEqualTo(5);
    }

    @Test
    void aSetupChangeMakesTheNextRevisionAndKeepsTheFirst() {
        var airframe = client.post("/api/airframes", Samples.AIRFRAME);
        var joint = client.post(airframe.header("Location") + "/joints", Samples.JOINT);
        assertThat(joint.status()).isEqualTo(201);
        String path = joint.header("Location");
        String changed = Samples.SETUP.replace("\"count\":3", "\"count\":2");
        assertThat(client.put(path + "/setup", changed).status()).isEqualTo(428);
        var second = client.put(path + "/setup", changed, "If-Match", joint.header("ETag"));
        assertThat(second.status()).isEqualTo(200);
        assertThat(second.body().path("setupRevision").asInt()).isEqualTo(2);
        var setups = client.get(path + "/setups").body().path("items");
        assertThat(setups).hasSize(2);
        assertThat(setups.get(1).path("setup").path("pins").get(0).path("count").asInt())
                .isEqualTo(3);
    }

    @Test
    void ofManyEditsOfOneVersionExactlyOneWins() {
        String airframe = client.airframe();
        String joint = client.joint(airframe);
        String setup = joint + "/setup";
        String tag = client.get(joint).header("ETag");
        assertThat(statuses(() -> client.put(airframe, "{\"name\":\"edited\"}", "If-Match", "\"v0\"")))
                .containsOnlyOnce(200)
                .allMatch(status -> status == 200 || status == 412);
        assertThat(statuses(() -> client.put(setup, Samples.SETUP, "If-Match", tag)))
                .containsOnlyOnce(200)
                .allMatch(status -> status == 200 || status == 412);
        assertThat(client.get(joint + "/setups").body().path("items")).hasSize(2);
    }

    private static java.util.List<Integer> statuses(java.util.function.Supplier<Client.Answer> edit) {
        var edits = java.util.stream.Stream.generate(() -> java.util.concurrent.CompletableFuture.supplyAsync(
                        edit, command -> new Thread(command).start()))
                .limit(50)
                .toList();
        return edits.stream().map(done -> done.join().status()).toList();
    }
}
