package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** A backup charge beside what was fired, on the walk of the worked example: 0.95 g is the most ever fired, 1.15 g is flown. */
@ServiceTest
class BackupApiTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String airframe = "";
    private String joint = "";
    private int hour = 10;

    @BeforeEach
    void walk() {
        walked(Samples.JOINT);
    }

    private JsonNode walked(String described) {
        emptyLog.empty();
        airframe = client.airframe();
        joint = client.post(airframe + "/joints", described).header("Location");
        fire("0.85", "separated");
        fire("0.65", "none");
        fire("0.95", "separated");
        fire("0.95", "separated");
        return flight();
    }

    private void fire(String grams, String outcome) {
        String at = "2026-05-03T" + hour++ + ":20:00+01:00";
        assertThat(client.post(joint + "/ground-tests", Samples.test(grams, outcome, at))
                        .status())
                .isEqualTo(201);
    }

    private JsonNode flight() {
        return client.get(joint + "/flight-charge").body();
    }

    private String page(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(client.request(path, "Accept", "text/html").build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    @Test
    void everyAnswerThatNamesItSaysHowFarAboveWhatWasFiredItLies() {
        JsonNode flight = flight();
        assertThat(flight.at("/backup/value").asDouble()).isEqualTo(1.45);
        JsonNode proof = flight.path("backupProof");
        assertThat(proof.path("firedBefore").asBoolean()).isFalse();
        assertThat(proof.at("/highestFired/value").asDouble()).isEqualTo(0.95);
        assertThat(proof.path("timesHighest").asDouble()).isEqualTo(1.526);
        assertThat(proof.path("shots")
                        .valueStream()
                        .map(shot -> shot.path("value").asDouble()))
                .containsExactly(1.15, 1.40, 1.45);
        assertThat(proof.path("text").asString())
                .isEqualTo(
                        "Not fired before: 1.53 times the highest charge fired without damage, 0.95 g. Shots of 1.15 g,"
                                + " 1.40 g and 1.45 g on the ground prove that the airframe takes it.");
        JsonNode stop = client.get(joint + "/ladder").body().path("first");
        assertThat(stop.at("/backup/value").asDouble()).isEqualTo(1.45);
        assertThat(stop.at("/backupProof/timesHighest").asDouble()).isEqualTo(1.526);
        assertThat(stop.at("/backupProof/text").asString())
                .isEqualTo("not fired before: 1.53 times the highest fired without damage");
    }

    @Test
    void theAnswerThatStopsNamesItAndItsProofAndSoDoesEveryPage() throws IOException, InterruptedException {
        JsonNode stop = client.get(joint + "/next-charge").body();
        assertThat(stop.path("decision").asString()).isEqualTo("stop");
        assertThat(stop.path("backup")).isEqualTo(flight().path("backup"));
        assertThat(stop.path("backupProof")).isEqualTo(flight().path("backupProof"));
        JsonNode kept = client.get("/api/field-kit").body().at("/joints/0/advice");
        assertThat(kept.path("backupProof")).isEqualTo(stop.path("backupProof"));
        String unproved = "Its backup was not fired before: 1.53 times the highest fired without damage.";
        String[] pages = {"/", airframe.replace("/api", ""), joint.replace("/api", "") + "/plan"};
        for (String path : pages) {
            assertThat(page(path)).as(path).contains("backup 1.45 g", unproved);
        }
        for (String shot : List.of("1.15", "1.40", "1.45")) {
            fire(shot, "separated");
        }
        for (String path : pages) {
            assertThat(page(path)).as(path).contains("backup ").doesNotContain("not fired before");
        }
    }

    @Test
    void oneShotOfItProvesIt() throws IOException, InterruptedException {
        String sheet = airframe.replace("/api", "") + "/flight-day";
        assertThat(page(sheet)).contains("Backup, later", "Not fired before: 1.53 times the highest charge fired");
        fire("1.15", "separated");
        JsonNode before = flight();
        String backup = before.at("/backup/value").asString();
        List<JsonNode> shots = before.at("/backupProof/shots").valueStream().toList();
        shots.forEach(shot -> fire(shot.path("value").asString(), "separated"));
        JsonNode after = flight();
        assertThat(after.at("/backup/value").asString()).isEqualTo(backup);
        assertThat(after.at("/backupProof/firedBefore").asBoolean()).isTrue();
        assertThat(after.at("/backupProof/shots")).isEmpty();
        assertThat(after.at("/backupProof/text").asString())
                .isEqualTo("The airframe has taken " + backup + " g without damage.");
        assertThat(page(sheet)).contains("Backup, later").doesNotContain("Not fired before");
    }

    /** 1.15 g and 1.45 g are 2.60 g: 374 kPa by the formula, and the limit is 300 kPa. */
    @Test
    void saysWhatBothDoAtOnce() throws IOException, InterruptedException {
        JsonNode both = flight().path("bothAtOnce");
        assertThat(both.at("/charge/value").asDouble()).isEqualTo(2.60);
        assertThat(both.at("/gaugePressure/value").asDouble()).isBetween(374.0, 375.0);
        assertThat(both.path("timesThreshold").asDouble()).isBetween(3.93, 3.95);
        assertThat(both.path("withinLimits").asBoolean()).isFalse();
        assertThat(both.path("text").asString())
                .startsWith("They must not overlap: together, 2.60 g, they make 375")
                .contains("at most 2.08 g are allowed");
        assertThat(page(airframe.replace("/api", "") + "/flight-day")).contains("They must not overlap");
        JsonNode stronger = walked(Samples.JOINT.replace("300", "400")).path("bothAtOnce");
        assertThat(stronger.path("withinLimits").asBoolean()).isTrue();
        assertThat(stronger.path("text").asString()).startsWith("They may overlap: together, 2.60 g, they make 375");
    }

    /** 25 mm of shoulder and 15 N of fit are little; 400 mm use up the gas. */
    @Test
    void whatChangesWhatAChargeDoesStandsOnTheFlightSheet() throws IOException, InterruptedException {
        String spent = "its gas is spent before the shoulder is out";
        String sheet = airframe.replace("/api", "") + "/flight-day";
        assertThat(page(sheet)).doesNotContain(spent);
        String sticky = Samples.SETUP
                .replace("\"shoulder\":{\"value\":45", "\"shoulder\":{\"value\":800")
                .replace("\"fitForce\":{\"value\":15", "\"fitForce\":{\"value\":300")
                .replace("\"count\":3", "\"count\":2");
        assertThat(client.put(joint + "/setup", sticky, "If-Match", "*").status())
                .isEqualTo(200);
        assertThat(client.get(joint + "/next-charge").raw().body()).contains(spent);
        assertThat(page(joint + "/ladder")).contains(spent);
        assertThat(page(sheet)).contains(spent);
    }
}
