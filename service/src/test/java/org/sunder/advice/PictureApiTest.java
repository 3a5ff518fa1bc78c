package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** The charge ruler and the side view of what is stored, as values and as pictures. */
@ServiceTest
class PictureApiTest {

    @Autowired
    Client client;

    private String airframe;
    private String joint;

    @BeforeEach
    void aJoint() {
        airframe = client.airframe();
        joint = client.joint(airframe);
    }

    @Test
    void theRulerHoldsWhatTheOtherAnswersSay() {
        log("0.85", "partial");
        JsonNode next = client.get(joint + "/next-charge").body();
        JsonNode ruler = client.get(joint + "/ruler").body();
        assertThat(ruler.path("subject").asString()).isEqualTo("Bittern, nose to bay");
        assertThat(ruler.path("nextCharge")).isEqualTo(next.path("charge"));
        assertThat(ruler.path("ceiling").path("value"))
                .isEqualTo(next.path("ceiling").path("value"));
        assertThat(ruler.path("handbookCharge")).isEqualTo(next.path("handbookCharge"));
        assertThat(ruler.path("flightCharge").isMissingNode()).isTrue();
        assertThat(ruler.path("cautions")).isEqualTo(next.path("cautions"));
    }

    @Test
    void theBandIsWhereTheCurveRuns() {
        JsonNode likely = client.get(joint + "/ruler").body().path("likely");
        JsonNode curve = client.get(joint + "/curve").body();
        for (JsonNode point : curve.path("points")) {
            double charge = point.path("charge").path("value").asDouble();
            double separated = point.path("separated").asDouble();
            assertThat(separated < 0.05 + 0.01 || charge > value(likely, "low") - 0.01)
                    .isTrue();
            assertThat(separated < 0.50 + 0.01 || charge > value(likely, "middle") - 0.01)
                    .isTrue();
            assertThat(separated > 0.95 - 0.01 || charge < value(likely, "high") + 0.01)
                    .isTrue();
        }
    }

    private static final double NEEDED = 0.8; // g, of the joint that the test stands for

    @Test
    void whereTestingIsDoneTheFlagsStandOnTheFlightCharge() {
        for (int i = 0; i < 10 && decision().equals("fire"); i++) {
            JsonNode charge = client.get(joint + "/next-charge").body().path("charge");
            String time = "2026-05-03T1" + i + ":50:00+01:00";
            var logged = client.post(
                    joint + "/ground-tests",
                    Samples.test(
                            charge.path("value").asString(),
                            charge.path("value").asDouble() < NEEDED ? "none" : "separated",
                            time));
            assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
        }
        assertThat(decision()).isEqualTo("stop");
        JsonNode ruler = client.get(joint + "/ruler").body();
        JsonNode flight = client.get(joint + "/flight-charge").body();
        assertThat(ruler.path("nextCharge").isMissingNode()).isTrue();
        assertThat(ruler.path("flightCharge")).isEqualTo(flight.path("primary"));
        assertThat(ruler.path("backupCharge")).isEqualTo(flight.path("backup"));
    }

    @Test
    void testsOfAnEarlierSetupStandAtTheChargeThatWouldDoTheSame() {
        String voided = log("0.85", "partial").header("Location");
        client.post(voided + "/void", "{\"reason\":\"a pin was missing\"}");
        String fewerPins = Samples.SETUP.replace("\"count\":3", "\"count\":2");
        assertThat(client.put(joint + "/setup", fewerPins, "If-Match", "\"v0\"").status())
                .isEqualTo(200);
        JsonNode firing = client.get(joint + "/ruler").body().path("firings").get(0);
        assertThat(firing.path("earlierSetup").asBoolean()).isTrue();
        assertThat(firing.path("voided").asBoolean()).isTrue();
        assertThat(firing.path("charge").path("value").asString()).isEqualTo("0.85");
        // By hand: (2·205.6 + 15) / (3·205.6 + 15) = 0.6746 of the force, so of the charge.
        assertThat(firing.path("comparable").path("value").asDouble()).isCloseTo(0.85 * 0.6746, within(0.001));
        assertThat(svg(joint + "/ruler")).contains("0.85 g partial, void, in an earlier setup, drawn at 0.57 g");
    }

    @Test
    void theRulerIsDrawnForTheWidthAskedFor() {
        assertThat(svg(joint + "/ruler?width=360&size=small")).contains("width=\"360\"", "class=\"ruler small\"");
        assertThat(svg(joint + "/ruler")).contains("width=\"640\"", "class=\"ruler large\"");
    }

    @Test
    void anOddWidthOrSizeIsRefusedInWords() {
        for (String asked : List.of("width=239", "width=2001", "width=wide", "size=huge")) {
            var answer = send(joint + "/ruler?" + asked);
            assertThat(answer.statusCode()).as(asked).isEqualTo(400);
            assertThat(answer.body()).contains(asked.replaceAll("=.*", ""));
        }
        assertThat(send(airframe + "/side-view?width=239").statusCode()).isEqualTo(400);
        var stranger = send(airframe + "/side-view?open=01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e");
        assertThat(stranger.statusCode()).isEqualTo(400);
        assertThat(stranger.body()).contains("open", "no such joint");
    }

    @Test
    void whatIsNotThereIsNotFound() {
        String nobody = "01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e";
        assertThat(client.get("/api/joints/" + nobody + "/ruler").status()).isEqualTo(404);
        assertThat(client.get("/api/airframes/" + nobody + "/side-view").status())
                .isEqualTo(404);
    }

    @Test
    void theSideViewIsPutTogetherFromTheSetups() throws IOException {
        Path setup = Path.of("src", "main", "resources", "demo", "bittern-booster.json");
        client.post(
                airframe + "/joints",
                "{\"name\":\"bay to booster\",\"event\":\"drogue\",\"setup\":" + Files.readString(setup) + "}");
        JsonNode parts = client.get(airframe + "/side-view").body().path("parts");
        assertThat(parts.valueStream().map(part -> part.path("kind").asString()))
                .containsExactly("nose", "bay", "tube", "tail");
        assertThat(parts.valueStream().map(part -> part.path("described").asBoolean()))
                .containsExactly(true, false, true, false);
        assertThat(value(parts.get(0), "length")).isEqualTo(620);
        assertThat(value(parts.get(0), "diameter")).isEqualTo(98);
        assertThat(value(parts.get(2), "length")).isEqualTo(560);
        assertThat(parts.get(0).path("joint").path("name").asString()).isEqualTo("nose to bay");
        assertThat(parts.get(1).path("joint").path("name").asString()).isEqualTo("bay to booster");
        assertThat(parts.get(1).path("joint").path("evidence").asString()).isEqualTo("none");
        assertThat(svg(airframe + "/side-view?width=320&open=" + joint.replaceAll(".*/", "")))
                .contains("width=\"320\"", "nose to bay: evidence none, drawn opened");
    }

    @Test
    void anAirframeWithoutJointsIsDrawnPlain() {
        String bare = client.airframe();
        JsonNode parts = client.get(bare + "/side-view").body().path("parts");
        assertThat(parts.valueStream()).noneMatch(part -> part.path("described").asBoolean());
        assertThat(svg(bare + "/side-view")).contains("No joint is described yet");
    }

    private String decision() {
        return client.get(joint + "/next-charge").body().path("decision").asString();
    }

    private static double value(JsonNode of, String field) {
        return of.path(field).path("value").asDouble();
    }

    private String svg(String path) {
        var answer = send(path);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
        return answer.body();
    }

    private HttpResponse<String> send(String path) {
        try {
            return HttpClient.newHttpClient()
                    .send(
                            client.request(path, "Accept", "image/svg+xml, application/problem+json")
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private Client.Answer log(String grams, String outcome) {
        return client.post(joint + "/ground-tests", Samples.test(grams, outcome));
    }
}
