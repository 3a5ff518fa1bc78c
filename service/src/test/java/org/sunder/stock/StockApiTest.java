package org.sunder.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** Powders and pin batches, and what setups take from them. */
@ServiceTest
class StockApiTest {

    private static final String STANDARD = "/api/powders/00000000-0000-7000-8000-000000000010";

    @Autowired
    Client client;

    String airframe = "";
    String name = "";

    @BeforeEach
    void prepare() {
        airframe = client.airframe();
        name = "tin " + UUID.randomUUID();
    }

    @Test
    void deletesAPullEnteredByMistakeAndMovesTheOthersUp() {
        String batch = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}")
                .header("Location");
        String pulls = batch + "/pull-tests";
        for (String force : new String[] {"76", "960", "80", "78"}) {
            client.post(pulls, "{\"force\":{\"value\":" + force + ",\"unit\":\"N\"}}");
        }
        client.post(pulls + "/3/leave-out", "");
        assertThat(client.delete(pulls + "/2").status()).isEqualTo(428);
        assertThat(client.delete(pulls + "/2", "If-Match", "\"v1\"").status()).isEqualTo(412);
        assertThat(client.delete(pulls + "/5", "If-Match", "*").status()).isEqualTo(404);
        var gone = client.delete(pulls + "/2", "If-Match", client.get(batch).header("ETag"));
        assertThat(gone.status()).isEqualTo(200);
        assertThat(gone.raw().body()).doesNotContain("\"value\":960");
        var few = client.delete(pulls + "/1", "If-Match", "*");
        assertThat(few.status()).as("two that count make the strength").isEqualTo(409);
        assertThat(few.body().path("detail").asString()).contains("Add the right pull");
        assertThat(client.post(pulls + "/2/take-back", "").status())
                .as("the third is now the second")
                .isEqualTo(200);
        client.post(pulls, "{\"force\":{\"value\":79,\"unit\":\"N\"}}");
        String export = client.get("/api/export").raw().body();
        assertThat(client.post("/api/import", export).status())
                .as("places without a gap")
                .isEqualTo(200);
        assertThat(client.get(batch).raw().body()).containsSubsequence("76", "80", "78", "79");
    }

    @Test
    void aPowderComesBackWithItsDigitsAndANewLotIsLessCertain() {
        var made = client.post("/api/powders", powder(name, "215.0"));
        assertThat(made.status()).isEqualTo(201);
        var read = client.get(made.header("Location"));
        assertThat(read.raw().body()).contains("{\"value\":215.0,\"unit\":\"kJ/kg\"}");
        JsonNode standard = client.get(STANDARD).body();
        assertThat(read.body().path("relativeUncertainty").decimalValue())
                .isGreaterThan(standard.path("relativeUncertainty").decimalValue());
    }

    @Test
    void theStandardPowderIsAlwaysThereAndNeverChanges() {
        JsonNode standard = client.get(STANDARD).body();
        assertThat(standard.path("name").asString()).isEqualTo("fine-grain black powder");
        assertThat(standard.path("powderForce").path("unit").asString()).isEqualTo("ft.lbf/lb");
        // 22.16 ft.lbf/(lb.R) times 3307 R, common practice.
        assertThat(standard.path("powderForce").path("value").decimalValue()).isEqualByComparingTo("73283.12");
        assertThat(client.put(STANDARD, powder(name, "215"), "If-Match", "\"v0\"")
                        .status())
                .isEqualTo(409);
        assertThat(client.delete(STANDARD, "If-Match", "\"v0\"").status()).isEqualTo(409);
        assertThat(client.post("/api/powders", powder("fine-grain black powder", "215"))
                        .status())
                .isEqualTo(409);
        String last = "/api/powders?limit=200";
        JsonNode page = client.get(last).body();
        while (page.has("next")) {
            page = client.get(last + "&cursor=" + page.path("next").asString()).body();
        }
        JsonNode items = page.path("items");
        assertThat(items.get(items.size() - 1).path("standard").asBoolean()).isTrue();
    }

    @Test
    void pagesOfPowdersEndWithTheStandardOneOnce() {
        client.post("/api/powders", powder(name, "215"));
        client.post("/api/powders", powder(name + " b", "215"));
        int standard = 0;
        String path = "/api/powders?limit=1";
        String cursor = "";
        do {
            JsonNode page = client.get(path + cursor).body();
            assertThat(page.path("items")).hasSize(1);
            standard += page.path("items").get(0).path("standard").asBoolean() ? 1 : 0;
            cursor = page.has("next") ? "&cursor=" + page.path("next").asString() : "";
        } while (!cursor.isEmpty());
        assertThat(standard).isEqualTo(1);
    }

    @Test
    void aNameIsUniqueUntilItsPowderIsArchived() {
        var made = client.post("/api/powders", powder(name, "215"));
        var twin = client.post("/api/powders", powder(name, "216"));
        assertThat(twin.status()).isEqualTo(409);
        assertThat(twin.fault("/name").path("detail").asString()).contains(name);
        assertThat(client.delete(made.header("Location")).status()).isEqualTo(428);
        assertThat(client.delete(made.header("Location"), "If-Match", "\"v0\"").status())
                .isEqualTo(204);
        assertThat(client.post("/api/powders", powder(name, "216")).status()).isEqualTo(201);
        assertThat(client.get(made.header("Location")).body().path("archivedAt").asString())
                .isNotEmpty();
    }

    @Test
    void onlyTheVersionThatWasReadIsChanged() {
        var made = client.post("/api/powders", powder(name, "215"));
        String path = made.header("Location");
        assertThat(client.put(path, powder(name, "220")).status()).isEqualTo(428);
        var changed = client.put(path, powder(name, "220"), "If-Match", "\"v0\"");
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.header("ETag")).isEqualTo("\"v1\"");
        assertThat(client.put(path, powder(name, "221"), "If-Match", "\"v0\"").status())
                .isEqualTo(412);
    }

    @Test
    void aSetupKeepsThePowderItCameIntoForceWith() {
        var powder = client.post("/api/powders", powder(name, "180"));
        String setup = Samples.SETUP.replace("\"shoulder\"", "\"powder\":\"" + name + "\",\"shoulder\"");
        var joint = client.post(airframe + "/joints", joint(setup));
        assertThat(joint.status()).as(joint.raw().body()).isEqualTo(201);
        assertThat(joint.body().path("setup").path("powderForce").path("value").asInt())
                .isEqualTo(180);
        String estimate = joint.header("Location") + "/estimate";
        double before =
                client.get(estimate).body().path("handbookCharge").path("value").asDouble();
        double standard = 0.660; // g, worked by hand beside the example of the standard powder
        assertThat(before).isCloseTo(standard * 219.05 / 180, offset(0.002));
        client.put(powder.header("Location"), powder(name, "240"), "If-Match", "\"v0\"");
        assertThat(client.get(estimate)
                        .body()
                        .path("handbookCharge")
                        .path("value")
                        .asDouble())
                .isEqualTo(before);
        var again = client.put(joint.header("Location") + "/setup", setup, "If-Match", joint.header("ETag"));
        assertThat(again.body().path("setup").path("powderForce").path("value").asInt())
                .isEqualTo(240);
    }

    @Test
    void aSetupMayNotClaimAnotherPowderForce() {
        client.post("/api/powders", powder(name, "180"));
        String named = "\"powder\":\"" + name + "\",\"powderForce\":{\"value\":%s,\"unit\":\"J/kg\"},\"shoulder\"";
        var same = client.post(
                airframe + "/joints", joint(Samples.SETUP.replace("\"shoulder\"", String.format(named, "180000"))));
        assertThat(same.status()).isEqualTo(201);
        var other = client.post(
                airframe + "/joints", joint(Samples.SETUP.replace("\"shoulder\"", String.format(named, "900000"))));
        assertThat(other.status()).isEqualTo(422);
        assertThat(other.fault("/setup/powderForce").path("allowed").asString()).isEqualTo("180 kJ/kg");
        var unnamed = client.post(
                airframe + "/joints",
                joint(Samples.SETUP.replace(
                        "\"shoulder\"", "\"powderForce\":{\"value\":900,\"unit\":\"kJ/kg\"},\"shoulder\"")));
        assertThat(unnamed.status()).isEqualTo(422);
    }

    @Test
    void anUnknownPowderIsRefusedByName() {
        var answer = client.post(
                airframe + "/joints",
                joint(Samples.SETUP.replace("\"shoulder\"", "\"powder\":\"nowhere\",\"shoulder\"")));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.fault("/setup/powder").path("allowed").asString()).contains("fine-grain black powder");
    }

    @Test
    void pullTestsMakeTheStatisticsOfABatch() {
        String batch = batch("M2.5");
        assertThat(client.get(batch).body().path("statistics").path("count").asInt())
                .isZero();
        pull(batch, "200.0");
        var one = client.get(batch).body().path("statistics");
        assertThat(one.has("mean")).isFalse();
        pull(batch, "210");
        pull(batch, "226");
        JsonNode statistics = client.get(batch).body().path("statistics");
        // By hand: (200 + 210 + 226)/3 = 212; squares 144 + 4 + 196 = 344, over 2 = 172, root 13.115.
        assertThat(statistics.path("count").asInt()).isEqualTo(3);
        assertThat(statistics.path("mean").path("value").decimalValue()).isEqualByComparingTo("212");
        assertThat(statistics.path("standardDeviation").path("value").decimalValue())
                .isEqualByComparingTo("13.115");
        assertThat(client.get(batch).header("ETag")).isEqualTo("\"v3\"");
    }

    @Test
    void aRepeatedPullTestIsCountedOnce() {
        String batch = batch("M2.5");
        for (int i = 0; i < 2; i++) {
            client.post(batch + "/pull-tests", "{\"force\":{\"value\":200,\"unit\":\"N\"}}", "Idempotency-Key", "same");
        }
        assertThat(client.get(batch).body().path("pullTests")).hasSize(1);
    }

    @Test
    void aSetupKeepsThePinsItCameIntoForceWith() {
        String batch = batch("M2.5");
        pull(batch, "230");
        pull(batch, "234");
        String id = batch.replaceAll(".*/", "");
        String setup = Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + id + "\"");
        var joint = client.post(airframe + "/joints", joint(setup));
        assertThat(joint.status()).as(joint.raw().body()).isEqualTo(201);
        JsonNode measured = joint.body().path("setup").path("pins").get(0).path("measured");
        assertThat(measured.path("mean").path("value").decimalValue()).isEqualByComparingTo("232");
        assertThat(measured.path("tests").asInt()).isEqualTo(2);
        String estimate = joint.header("Location") + "/estimate";
        assertThat(client.get(estimate).body().path("pinForce").path("value").decimalValue())
                .isEqualByComparingTo("696");
        pull(batch, "180");
        assertThat(client.get(estimate).body().path("pinForce").path("value").decimalValue())
                .isEqualByComparingTo("696");
        var again = client.put(joint.header("Location") + "/setup", setup, "If-Match", joint.header("ETag"));
        assertThat(again.body()
                        .path("setup")
                        .path("pins")
                        .get(0)
                        .path("measured")
                        .path("tests")
                        .asInt())
                .isEqualTo(3);
    }

    @Test
    void equalPullsWhoseScatterIsOnlyRoundingLeaveTheJointReadable() {
        String batch = batch("M2.5");
        for (int i = 0; i < 7; i++) {
            var pulled = client.post(batch + "/pull-tests", "{\"force\":{\"value\":0.3,\"unit\":\"lbf\"}}");
            assertThat(pulled.status()).as(pulled.raw().body()).isEqualTo(201);
        }
        String setup =
                Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + batch.replaceAll(".*/", "") + "\"");
        var joint = client.post(airframe + "/joints", joint(setup));
        assertThat(joint.status()).as(joint.raw().body()).isEqualTo(201);
        var next = client.get(joint.header("Location") + "/next-charge");
        assertThat(next.status()).as(next.raw().body()).isEqualTo(200);
    }

    @Test
    void anUnchangedSetupIsTakenBackThoughItsBatchHasOneMorePull() {
        String batch = batch("M2.5");
        pull(batch, "230");
        pull(batch, "234");
        String setup =
                Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + batch.replaceAll(".*/", "") + "\"");
        var joint = client.post(airframe + "/joints", joint(setup));
        String at = joint.header("Location");
        pull(batch, "180");
        var read = client.get(at);
        var same = client.put(at + "/setup", read.body().path("setup").toString(), "If-Match", read.header("ETag"));
        assertThat(same.status()).as(same.raw().body()).isEqualTo(200);
        JsonNode measured = same.body().at("/setup/pins/0/measured");
        assertThat(measured.path("tests").asInt()).as("the stock of today").isEqualTo(3);
        // The same value in other words is the same value.
        String words = same.body().path("setup").toString().replaceFirst("(\"mean\":\\{\"value\":[0-9.]+)", "$10");
        String written = measured.at("/mean/value").decimalValue().scale() > 0
                ? words
                : same.body().path("setup").toString();
        var again = client.put(at + "/setup", written, "If-Match", "*");
        assertThat(again.status()).as(again.raw().body()).isEqualTo(200);
        String altered = written.replaceFirst("\"tests\":3", "\"tests\":900");
        var refused = client.put(at + "/setup", altered, "If-Match", "*");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.fault("/pins/0/measured").path("detail").asString()).contains("not what the stock says");
    }

    @Test
    void aBatchThatASetupCannotUseIsRefusedByName() {
        String few = batch("M2.5");
        pull(few, "230");
        String other = batch("M3");
        pull(other, "300");
        pull(other, "310");
        String unknown = "01890000-0000-7000-8000-000000000000";
        String[][] cases = {
            {few.replaceAll(".*/", ""), "too few"}, {other.replaceAll(".*/", ""), "thread M3"}, {unknown, "no such"}
        };
        for (String[] each : cases) {
            String setup = Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + each[0] + "\"");
            var answer = client.post(airframe + "/joints", joint(setup));
            assertThat(answer.status()).isEqualTo(422);
            assertThat(answer.fault("/setup/pins/0/batch").path("detail").asString())
                    .contains(each[1]);
        }
        var odd = client.post(
                airframe + "/joints", joint(Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"x\"")));
        assertThat(odd.status()).isEqualTo(400);
        assertThat(odd.fault("/setup/pins/0/batch").path("allowed").asString()).isEqualTo("a UUID");
    }

    @Test
    void badStockIsRefusedByName() {
        assertThat(client.post("/api/powders", powder(name, "-1"))
                        .fault("/powderForce")
                        .path("allowed")
                        .asString())
                .isEqualTo("10 to 1000 kJ/kg");
        var unit = client.post("/api/powders", powder(name, "1").replace("kJ/kg", "kJ"));
        assertThat(unit.fault("/powderForce/unit").path("allowed").asString()).isEqualTo("J/kg, kJ/kg, ft.lbf/lb");
        var thread = client.post("/api/pin-batches", "{\"name\":\"a\",\"thread\":\"M99\"}");
        assertThat(thread.status()).isEqualTo(400);
        assertThat(thread.fault("/thread").path("allowed").asString()).contains("M2.5");
        String batch = batch("M2.5");
        var negative = client.post(batch + "/pull-tests", "{\"force\":{\"value\":-3,\"unit\":\"N\"}}");
        assertThat(negative.status()).isEqualTo(400);
        assertThat(negative.fault("/force").path("allowed").asString()).contains("0.1 N");
        assertThat(client.get(batch).body().path("pullTests")).isEmpty();
        String nowhere = "/api/pin-batches/01890000-0000-7000-8000-000000000000";
        assertThat(client.get(nowhere).status()).isEqualTo(404);
        assertThat(client.post(nowhere + "/pull-tests", "{\"force\":{\"value\":3,\"unit\":\"N\"}}")
                        .status())
                .isEqualTo(404);
    }

    @Test
    void anArchivedBatchTakesNoMorePulls() {
        String batch = batch("M2.5");
        assertThat(client.delete(batch, "If-Match", "\"v0\"").status()).isEqualTo(204);
        assertThat(client.post(batch + "/pull-tests", "{\"force\":{\"value\":3,\"unit\":\"N\"}}")
                        .status())
                .isEqualTo(409);
        assertThat(client.get("/api/pin-batches?limit=200").raw().body()).doesNotContain(batch.replaceAll(".*/", ""));
    }

    private static String powder(String name, String force) {
        return "{\"name\":\"" + name + "\",\"powderForce\":{\"value\":" + force + ",\"unit\":\"kJ/kg\"}}";
    }

    private static String joint(String setup) {
        return "{\"name\":\"nose to bay\",\"event\":\"main\",\"setup\":" + setup + "}";
    }

    private String batch(String thread) {
        return client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"" + thread + "\"}")
                .header("Location");
    }

    private void pull(String batch, String newtons) {
        client.post(batch + "/pull-tests", "{\"force\":{\"value\":" + newtons + ",\"unit\":\"N\"}}");
    }

    @Test
    void aPullFarFromTheOthersIsNamed() {
        String batch = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}")
                .header("Location");
        for (String force : List.of("190", "210")) {
            client.post(batch + "/pull-tests", "{\"force\":{\"value\":" + force + ",\"unit\":\"N\"}}");
        }
        assertThat(client.get(batch).body().path("finding").isMissingNode()).isTrue();
        client.post(batch + "/pull-tests", "{\"force\":{\"value\":2000,\"unit\":\"N\"}}");
        assertThat(client.get(batch).body().path("finding").asString()).startsWith("Pull 3, 2000 N, lies far");
    }

    @Test
    void aPullLeftOutStaysAndDoesNotCount() {
        String batch = batch("M2.5");
        pull(batch, "200");
        pull(batch, "210");
        pull(batch, "2000");
        String finding = client.get(batch).body().path("finding").asString("");
        assertThat(finding).startsWith("Pull 3, 2000 N,").contains("leave it out of what counts", "can be taken back");
        var left = client.post(batch + "/pull-tests/3/leave-out", "");
        assertThat(left.status()).as(left.raw().body()).isEqualTo(200);
        assertThat(left.header("ETag")).isEqualTo("\"v4\"");
        assertThat(left.body().path("pullTests")).hasSize(3);
        assertThat(left.body().at("/pullTests/2/number").asInt()).isEqualTo(3);
        assertThat(left.body().at("/pullTests/2/leftOut").asBoolean()).isTrue();
        assertThat(left.body().at("/pullTests/1/leftOut").asBoolean()).isFalse();
        assertThat(left.body().has("finding")).isFalse();
        assertThat(left.body().at("/statistics/count").asInt()).isEqualTo(2);
        // By hand: the mean of 200 and 210 is 205, their sample standard deviation 10/√2 = 7.0711.
        assertThat(left.body().at("/statistics/mean/value").decimalValue()).isEqualByComparingTo("205");
        assertThat(left.body().at("/statistics/standardDeviation/value").decimalValue())
                .isEqualByComparingTo("7.0711");
        var again = client.post(batch + "/pull-tests/3/leave-out", "");
        assertThat(again.header("ETag")).as("asked again").isEqualTo(left.header("ETag"));
        assertThat(client.get(batch).body()).isEqualTo(left.body());
        var back = client.post(batch + "/pull-tests/3/take-back", "");
        assertThat(back.body().at("/statistics/count").asInt()).isEqualTo(3);
        assertThat(back.header("ETag")).isEqualTo("\"v5\"");
        assertThat(client.post(batch + "/pull-tests/3/take-back", "").header("ETag"))
                .isEqualTo("\"v5\"");
    }

    @Test
    void twoPullsMustCountAndOnlyThereAreAPullCanBeLeftOut() {
        String batch = batch("M2.5");
        pull(batch, "200");
        pull(batch, "210");
        var few = client.post(batch + "/pull-tests/1/leave-out", "");
        assertThat(few.status()).isEqualTo(409);
        assertThat(few.body().path("detail").asString()).contains("At least 2 pulls must count");
        for (String number : List.of("0", "3", "-1")) {
            assertThat(client.post(batch + "/pull-tests/" + number + "/leave-out", "")
                            .status())
                    .isEqualTo(404);
        }
        assertThat(client.post(batch + "/pull-tests/one/leave-out", "").status())
                .isEqualTo(400);
        pull(batch, "220");
        client.delete(batch, "If-Match", "*");
        assertThat(client.post(batch + "/pull-tests/1/leave-out", "").status())
                .as("put away")
                .isEqualTo(409);
        assertThat(client.get(batch).body().path("statistics").path("count").asInt())
                .isEqualTo(3);
    }

    @Test
    void aSetupInForceKeepsThePullThatIsLeftOutLater() {
        String batch = batch("M2.5");
        pull(batch, "230");
        pull(batch, "234");
        pull(batch, "180");
        String setup =
                Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + batch.replaceAll(".*/", "") + "\"");
        var joint = client.post(airframe + "/joints", joint(setup));
        client.post(batch + "/pull-tests/3/leave-out", "");
        var kept = client.get(joint.header("Location"));
        assertThat(kept.body().at("/setup/pins/0/measured"))
                .isEqualTo(joint.body().at("/setup/pins/0/measured"));
        var next = client.put(joint.header("Location") + "/setup", setup, "If-Match", kept.header("ETag"));
        assertThat(next.body().at("/setup/pins/0/measured/mean/value").decimalValue())
                .isEqualByComparingTo("232");
        assertThat(next.body().at("/setup/pins/0/measured/tests").asInt()).isEqualTo(2);
    }
}
