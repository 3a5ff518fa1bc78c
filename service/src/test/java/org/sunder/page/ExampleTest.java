package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.airframe.Airframe;
import org.sunder.photo.Pictures;

/** The invented rocket: added, marked wherever it is shown, without a word in what is real, and taken away again. */
@ServiceTest
class ExampleTest {

    private static final String EXAMPLE = "/airframes/" + Airframe.EXAMPLE;

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    @BeforeEach
    @AfterEach
    void nothing() {
        emptyLog.empty();
    }

    @Test
    void onePressAddsItAndOneTakesExactlyThatAway() {
        client.airframe();
        String before = export();
        assertThat(press("/example").statusCode()).isEqualTo(302);
        assertThat(client.get("/api" + EXAMPLE).body().path("name").asString()).isEqualTo("Sandpiper (example)");
        assertThat(client.get("/api" + EXAMPLE + "/joints").body().path("items"))
                .hasSize(2);
        assertThat(press("/example").statusCode()).as("pressed twice").isEqualTo(302);
        assertThat(press("/example/away").statusCode()).isEqualTo(302);
        assertThat(export()).isEqualTo(before);
        assertThat(press("/example/away").statusCode()).as("pressed twice").isEqualTo(302);
    }

    @Test
    void anEmptyStartOffersItAndSaysWhatItIs() {
        assertThat(page("/"))
                .contains("How much powder parts your rocket?", "Add the example rocket", "The example is invented")
                .contains("no charges for any rocket", "href=\"/import\"");
        press("/example");
        assertThat(page("/")).contains("Take the example away").doesNotContain("Add the example rocket");
    }

    @Test
    void itIsMarkedWhereverItIsShown() {
        press("/example");
        String joint = client.get("/api" + EXAMPLE + "/joints")
                .body()
                .path("items")
                .path(0)
                .path("id")
                .asString();
        for (String path : new String[] {"/", EXAMPLE, EXAMPLE + "/flight-day", EXAMPLE + "/load-outs"}) {
            assertThat(page(path)).as(path).contains("(example)", "An invented rocket.");
        }
        for (String path : new String[] {"/joints/" + joint + "/plan", "/joints/" + joint, EXAMPLE + "/joints/new"}) {
            assertThat(page(path)).as(path).contains("(example)", "An invented rocket.");
        }
        String real = client.airframe();
        assertThat(page(real.replace("/api", ""))).doesNotContain("An invented rocket.");
        assertThat(page("/").split("An invented rocket.", -1)).hasSize(2);
        assertThat(page("/api/joints/" + joint + "/ladder")).contains("(example)", "An invented rocket.");
        assertThat(page("/fleet")).contains("(example)");
        String ours = client.post(real + "/joints", Samples.JOINT).header("Location");
        assertThat(page(ours + "/ladder")).doesNotContain("An invented rocket.");
        assertThat(client.get("/api/field-kit").body().path("joints"))
                .hasSize(3)
                .allSatisfy(one -> assertThat(one.path("example").asBoolean())
                        .isEqualTo(one.path("airframe").asString().contains("(example)")));
        assertThat(csv()).contains("(example)");
        var renamed = client.put("/api" + EXAMPLE, Samples.AIRFRAME, "If-Match", "*");
        assertThat(renamed.status()).isEqualTo(409);
        assertThat(renamed.body().path("detail").asString()).contains("The example keeps its name");
        assertThat(client.delete("/api" + EXAMPLE, "If-Match", "*").status()).isEqualTo(409);
    }

    @Test
    void itTeachesNothingRealAndLearnsNothingReal() {
        press("/example");
        String alone = ofExample();
        press("/example/away");
        String joint = client.joint();
        client.post(joint + "/ground-tests", Samples.test("0.85", "none"));
        String next = client.get(joint + "/next-charge").raw().body();
        String taught =
                client.get("/api/fleet/correction").body().path("newAirframe").toString();
        press("/example");
        assertThat(client.get(joint + "/next-charge").raw().body()).isEqualTo(next);
        assertThat(client.get("/api/fleet/correction")
                        .body()
                        .path("newAirframe")
                        .toString())
                .isEqualTo(taught);
        assertThat(ofExample()).isEqualTo(alone);
        client.post(joint + "/ground-tests", Samples.test("1.05", "separated", "2026-05-03T11:20:00+01:00"));
        assertThat(ofExample()).isEqualTo(alone);
    }

    @Test
    void whatHangsOnItIsNamedBeforeItGoesAlong() {
        press("/example");
        String joint = "/api/joints/"
                + client.get("/api" + EXAMPLE + "/joints")
                        .body()
                        .path("items")
                        .path(1)
                        .path("id")
                        .asString();
        assertThat(client.post(joint + "/ground-tests", Samples.test("1.40", "separated"))
                        .status())
                .isEqualTo(201);
        var asked = press("/example/away");
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body()).contains("1 test that you logged", "Take it all away", "Keep the example");
        assertThat(client.get("/api" + EXAMPLE).status()).isEqualTo(200);
        client.put(joint + "/setup", Samples.SETUP, "If-Match", "*");
        assertThat(press("/example/away", "tests=1").statusCode())
                .as("something came in between")
                .isEqualTo(409);
        assertThat(press("/example/away", "tests=1&setups=1").statusCode()).isEqualTo(302);
        assertThat(client.get("/api" + EXAMPLE).status()).isEqualTo(404);
    }

    @Test
    void aPhotoOfAnInventedTestIsNamedAndGoesAlong() {
        press("/example");
        String joint = "/api/joints/"
                + client.get("/api" + EXAMPLE + "/joints")
                        .body()
                        .path("items")
                        .path(0)
                        .path("id")
                        .asString();
        String invented = client.get(joint + "/ground-tests")
                .body()
                .path("items")
                .path(0)
                .path("id")
                .asString();
        var kept = client.send(client.request("/api/ground-tests/" + invented + "/photo")
                .header("Content-Type", "image/png")
                .PUT(HttpRequest.BodyPublishers.ofByteArray(Pictures.png(8, 8))));
        assertThat(kept.status()).as(kept.raw().body()).isEqualTo(201);
        var asked = press("/example/away");
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body())
                .contains("1 photo of a test", "name=\"photos\" value=\"1\"", "/api/export?photos=true");
        assertThat(press("/example/away", "photos=1").statusCode()).isEqualTo(302);
        assertThat(client.get("/api" + EXAMPLE).status()).isEqualTo(404);
    }

    private String ofExample() {
        StringBuilder said = new StringBuilder();
        client.get("/api" + EXAMPLE + "/joints")
                .body()
                .path("items")
                .forEach(joint ->
                        said.append(client.get("/api/joints/" + joint.path("id").asString() + "/next-charge")
                                .raw()
                                .body()));
        return said.toString();
    }

    private String export() {
        return client.get("/api/export").raw().body();
    }

    private String csv() {
        return sent(client.request("/api/export", "Accept", "text/csv")).body();
    }

    private String page(String path) {
        return sent(client.request(path, "Accept", "text/html,*/*;q=0.8")).body();
    }

    private static HttpResponse<String> sent(HttpRequest.Builder request) {
        return HttpClient.newHttpClient()
                .sendAsync(request.build(), HttpResponse.BodyHandlers.ofString())
                .join();
    }

    private HttpResponse<String> press(String path) {
        return press(path, "");
    }

    /** As a form of a page is sent. */
    private HttpResponse<String> press(String path, String fields) {
        return sent(client.request(path, "Accept", "text/html", "Sec-Fetch-Site", "same-origin")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(fields)));
    }
}
