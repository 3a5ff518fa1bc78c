package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** What the pages say, as they leave the service. */
@ServiceTest
class PagesOverHttpTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String airframe;
    private String joint;

    @BeforeEach
    void anAirframe() {
        emptyLog.empty();
        airframe = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Smew"))
                .header("Location");
        joint = client.joint(airframe);
    }

    @Test
    void theListsNameEveryJointWithItsEvidence() throws Exception {
        assertThat(page("/").body()).contains("Smew", "nose to bay", "Fire 0.85 g next", "is-none", "Charge ruler");
        assertThat(page("/").body()).as("beside every charge").contains("Nobody stands in line with either end");
        assertThat(page("/fleet").body()).contains("Smew", "No counted test yet.", "Where a new airframe starts");
    }

    @Test
    void theFirstPageShowsTenRocketsAndFindsTheOthersByName() throws Exception {
        assertThat(page("/").body()).doesNotContain("Find by name");
        for (int i = 0; i < 11; i++) {
            client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Teal " + i));
        }
        String first = page("/").body();
        assertThat(first).contains("Find by name", "Page 1 of 2", "Teal 10").doesNotContain(">Smew<");
        assertThat(first.split("<article", -1)).hasSize(1 + HomePage.SIZE);
        assertThat(page("/?page=2").body()).contains(">Smew<").doesNotContain("Teal 10");
        assertThat(page("/?sort=name").body()).contains(">Smew<");
        assertThat(page("/?find=sMe").body()).contains(">Smew<").doesNotContain("Teal");
        assertThat(page("/?find=nobody").body()).contains("No rocket of yours is called that.");
        assertThat(page("/?page=99").body()).contains("Page 2 of 2");
        assertThat(page("/fleet").body()).contains("Page 1 of 2", "Teal 10").doesNotContain(">Smew<");
        assertThat(page("/fleet?page=2").body())
                .contains(">Smew<", "Page 2 of 2", "nose to bay")
                .doesNotContain("Teal 10");
    }

    @Test
    void theFirstPageCountsWhatTheJointsWant() throws Exception {
        assertThat(page("/").body()).contains(">One joint to test.<");
        String other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"))
                .header("Location");
        client.post(other + "/ground-tests", Samples.test("0.75", "partial"));
        for (int i = 0; i < 6; i++) {
            client.post(other + "/ground-tests", Samples.test("1.00", "separated"));
        }
        assertThat(page("/").body()).contains(">One joint ready to fly, one to test.<");
        assertThat(page(other + "/ladder").body())
                .as("the card of a joint that is done")
                .contains("Enough is known to fly", "Backup, later: ", other.replace("/api", "") + "/plan");
    }

    /** What ten rockets of two joints with three tests each weigh; as sent it is a seventh of that. */
    @Test
    void theFirstPageIsLight() throws Exception {
        for (int i = 1; i < HomePage.SIZE; i++) {
            String each = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Teal " + i))
                    .header("Location");
            for (String name : List.of("nose to bay", "bay to booster")) {
                String at = client.post(each + "/joints", Samples.JOINT.replace("nose to bay", name))
                        .header("Location");
                client.post(at + "/ground-tests", Samples.test("0.75", "partial"));
                client.post(at + "/ground-tests", Samples.test("1.00", "separated"));
            }
        }
        assertThat(page("/").body()).hasSizeLessThan(560_000);
    }

    @Test
    void theSheetOfARocketPutAwayNamesNoCharge() throws Exception {
        String sheet = airframe.replace("/api", "") + "/flight-day";
        assertThat(page(sheet).body()).contains("nose to bay");
        assertThat(client.delete(airframe, "If-Match", client.get(airframe).header("ETag"))
                        .status())
                .isEqualTo(204);
        assertThat(page(sheet).body()).doesNotContain("nose to bay");
    }

    @Test
    void theJointsPageAnswersFirstAndSaysWhatFollowsAndWhatIsMissing() throws Exception {
        String plan = joint.replace("/api", "") + "/plan";
        assertThat(page(plan).body())
                .contains("Fire 0.85 g next", "And then", "nothing has moved it yet", "Nobody stands in line");
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        String test = client.post(joint + "/ground-tests", Samples.test("0.70", "partial", "2026-05-03T11:20:00+01:00"))
                .header("Location");
        client.post(test + "/void", "{\"reason\":\"a pin was missing\"}");
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "\"v0\"");
        assertThat(page(plan).body())
                .contains("Void: a pin was missing", "at 1.00 g or less", "What changed since the revision before")
                .contains("one test after the change of setup", "3 × M2.5");
        assertThat(page("/joints/" + UUID.randomUUID() + "/plan").statusCode()).isEqualTo(404);
    }

    /** 200 kPa is less than a joint needs that nothing parts: other setups are named, and no charge. */
    @Test
    void aJointThatMustChangeSaysWhatWouldDo() throws Exception {
        String weak = client.post(
                        airframe + "/joints",
                        Samples.JOINT.replace("\"value\":300,\"unit\":\"kPa\"", "\"value\":200,\"unit\":\"kPa\""))
                .header("Location");
        JsonNode next = client.get(weak + "/next-charge").body();
        for (int i = 0; i < 6 && next.path("decision").asString().equals("fire"); i++) {
            String grams = next.path("charge").path("value").asString();
            next = client.post(weak + "/ground-tests", Samples.test(grams, "none"))
                    .body()
                    .path("next");
        }
        String plan = page(weak.replace("/api", "") + "/plan").body();
        assertThat(plan)
                .contains("Change the setup", "What would do", "as pins: likely to need")
                .doesNotContain("And then");
        assertThat(next.path("options")).isNotEmpty();
        for (JsonNode option : next.path("options")) {
            assertThat(plan)
                    .as("the words of the answer")
                    .contains("<li>" + option.path("text").asString() + "</li>");
        }
        assertThat(page("/").body()).contains("Change the setup");
    }

    @Test
    void whatHeldThePowderStandsWithTheTest() throws Exception {
        client.post(
                joint + "/ground-tests", Samples.test("0.85", "none").replaceFirst("}$", ",\"containment\":\"vial\"}"));
        assertThat(page(joint.replace("/api", "") + "/plan").body()).contains("none, powder in a vial");
        assertThat(page(airframe.replace("/api", "")).body()).contains("Fired with powder in a vial.");
    }

    @Test
    void theFlightDayNamesNoChargeBeforeATestHasSeparatedTheJoint() throws Exception {
        String sheet = airframe.replace("/api", "") + "/flight-day";
        assertThat(page(sheet).body()).contains("Do not fly this joint yet.").doesNotContain("Backup, later");
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        client.post(joint + "/ground-tests", Samples.test("0.90", "separated", "2026-05-03T11:20:00+01:00"));
        assertThat(page(sheet).body())
                .contains("Backup, later", "with 95 % confidence", "Nobody stands in line with either end");
    }

    /** A separation at more than the joint is likely to need: the next test may end either way, and the plan be done. */
    @Test
    void theCardSaysWhyAFlightMayFollowATestThatDidNotSeparate() throws Exception {
        String reason = "can follow a test that did not separate";
        assertThat(page(joint + "/ladder?depth=2").body()).contains("Fire ").doesNotContain(reason);
        client.post(joint + "/ground-tests", Samples.test("1.15", "separated"));
        assertThat(page(joint + "/ladder?depth=2").body()).contains("Fly ", reason);
    }

    @Test
    void theFlightDayTellsALagInPascals() throws Exception {
        String sheet = page(airframe.replace("/api", "") + "/flight-day?site=300&bay=1,2&holes=4&speed=260")
                .body();
        // The same bay and speed as the example of the check of vents: 0.004263 kPa, 0.3653 m, holes of 2.717 mm.
        assertThat(sheet).contains("4.3 Pa behind", "0.37 m too low", "4 holes of 2.72 mm each");
    }

    @Test
    void theFieldPageIsTheSameForEveryJoint() throws Exception {
        assertThat(page(joint.replace("/api/joints", "/field")).body())
                .isEqualTo(page("/field").body());
    }

    @Test
    void theWorkerKeepsEveryFileOfThePages() throws Exception {
        var worker = page("/worker.js");
        assertThat(worker.headers().firstValue("Content-Type").orElse("")).startsWith("text/javascript");
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/static/assets"))) {
            assertThat(files.map(file -> "'/assets/" + file.getFileName() + "'").toList())
                    .allSatisfy(file -> assertThat(worker.body()).contains(file));
        }
        assertThat(worker.body()).doesNotContain("{{");
        assertThat(page("/manifest.webmanifest")
                        .headers()
                        .firstValue("Content-Type")
                        .orElse(""))
                .startsWith("application/manifest+json");
    }

    @Test
    void everyPageOfAnAirframeSaysWhereItIs() throws Exception {
        String own = airframe.replace("/api", "");
        String toJoint = joint.replace("/api", "") + "/plan";
        for (String path : new String[] {own + "/flight-day", own + "/load-outs", own + "/joints/new", own + "/edit"}) {
            assertThat(page(path).body()).as(path).contains("class=\"trail\"", "href=\"" + own + "\"", "aria-current");
        }
        assertThat(page(joint.replace("/api", "")).body())
                .contains("class=\"trail\"", "href=\"" + own + "\"", "href=\"" + toJoint + "\"");
        assertThat(page("/stock/powders/new").body())
                .contains("class=\"trail\"><a href=\"/stock\"".replace("><", " aria-label=\"Where you are\"><"));
    }

    @Test
    void whatIsNotThereIsAPageToo() throws Exception {
        var answer = page("/airframes/" + UUID.randomUUID());
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no such thing here").contains("<main");
        assertThat(page("/joints/7").statusCode()).isEqualTo(404);
        for (String path : new String[] {"/rockets", "/nowhere", "/stock/pins/7/8", "/airframes/x/y/z"}) {
            var nowhere = page(path);
            assertThat(nowhere.statusCode()).as(path).isEqualTo(404);
            assertThat(nowhere.body()).as(path).contains("<main", "To your rockets");
        }
    }

    private HttpResponse<String> page(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        client.request(path, "Accept", "text/html,*/*;q=0.8").build(),
                        HttpResponse.BodyHandlers.ofString());
    }
}
