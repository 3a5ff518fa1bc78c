package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** From a described joint to a flight charge, and what must hold on the way. */
@ServiceTest
class WalkTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    String airframe = "";
    String joint = "";

    @BeforeEach
    void prepare() {
        emptyLog.empty();
        airframe = client.airframe();
        joint = client.joint(airframe);
    }

    @Test
    void theEstimateAgreesWithTheExampleWorkedByHand() {
        JsonNode estimate = client.get(joint + "/estimate").body();
        // By hand: cavity 2.200 L, bay 0.298 L, fabric 0.382 L, free 1.520 L; three pins of 205.6 N; 95.1 kPa; 0.660 g;
        // 2.08 g.
        assertThat(value(estimate, "cavityVolume")).isCloseTo(2.200, offset(0.0005));
        assertThat(value(estimate, "freeVolume")).isCloseTo(1.520, offset(0.0005));
        assertThat(value(estimate, "pinForce")).isCloseTo(3 * 205.6, offset(0.1));
        assertThat(value(estimate, "thresholdPressure")).isCloseTo(95.1, offset(0.05));
        assertThat(value(estimate, "handbookCharge")).isCloseTo(0.660, offset(0.0005));
        assertThat(estimate.path("ceiling").path("value").decimalValue()).isEqualByComparingTo("2.082");
        assertThat(estimate.path("cautions")).hasSizeGreaterThanOrEqualTo(8);
    }

    @Test
    void theEstimateSpeaksTheUnitsAskedFor() {
        JsonNode estimate = client.get(joint + "/estimate?units=us").body();
        assertThat(estimate.path("thresholdPressure").path("unit").asString()).isEqualTo("psi");
        assertThat(value(estimate, "thresholdPressure")).isCloseTo(95.05 / 6.894757, offset(0.01));
        var odd = client.get(joint + "/estimate?units=imperial");
        assertThat(odd.status()).isEqualTo(400);
        assertThat(odd.fault("units").path("allowed").asString()).isEqualTo("metric, us");
    }

    @Test
    void reachesAFlightChargeByFollowingTheAdvice() {
        assertThat(client.get(joint + "/flight-charge").status()).isEqualTo(409);
        assertThat(client.get(joint + "/flight-charge").body().path("cautions")).isNotEmpty();
        JsonNode next = client.get(joint + "/next-charge").body();
        BigDecimal highest = null;
        int tests = 0;
        while (next.path("decision").asString().equals("fire")) {
            BigDecimal charge = next.path("charge").path("value").decimalValue();
            assertThat(charge.remainder(new BigDecimal("0.05"))).isEqualByComparingTo("0");
            if (highest == null) {
                assertThat(next.path("probability").path("separated").asDouble())
                        .isLessThanOrEqualTo(0.60);
            } else {
                assertThat(charge).isLessThanOrEqualTo(highest.multiply(new BigDecimal("1.25")));
            }
            highest = highest == null ? charge : highest.max(charge);
            String outcome =
                    charge.doubleValue() < 0.72 ? "none" : charge.doubleValue() < 0.84 ? "partial" : "separated";
            var logged = client.post(joint + "/ground-tests", Samples.test(charge.toPlainString(), outcome));
            assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
            assertThat(logged.raw().body()).contains("\"charge\":{\"value\":" + charge.toPlainString());
            JsonNode asked = client.get(joint + "/next-charge").body();
            assertThat(logged.body().path("next")).isEqualTo(asked);
            next = asked;
            tests++;
            assertThat(tests).isLessThan(12);
        }
        assertThat(next.path("decision").asString()).isEqualTo("stop");
        JsonNode flight = client.get(joint + "/flight-charge").body();
        assertThat(flight.path("primary")).isEqualTo(next.path("flightCharge"));
        assertThat(flight.path("evidence").asString()).isEqualTo("sufficient");
        assertThat(flight.path("modelProbability").asDouble()).isGreaterThanOrEqualTo(0.99);
        double primary = value(flight, "primary");
        assertThat(value(flight, "backup")).isBetween(primary * 1.25 - 1e-9, Math.min(2.082, primary * 1.25 + 0.05));
        assertThat(flight.path("testsAlone").path("tests").asInt()).isBetween(1, tests);
        assertThat(flight.path("cautions")).isNotEmpty();
        assertThat(flight.path("basis").path("tests").asInt()).isEqualTo(tests);
        JsonNode history = client.get(airframe + "/history").body().path("entries");
        assertThat(history.valueStream()
                        .filter(entry -> entry.path("kind").asString().equals("test-fired")))
                .hasSize(tests);
    }

    @Test
    void aReportSentTwiceIsStoredOnce() {
        String report = Samples.test("0.80", "partial");
        var first = client.post(joint + "/ground-tests", report, "Idempotency-Key", "field-1");
        var second = client.post(joint + "/ground-tests", report.replace(",", " ,"), "Idempotency-Key", "field-1");
        assertThat(first.status()).isEqualTo(201);
        assertThat(second.status()).isEqualTo(201);
        assertThat(second.raw().body()).isEqualTo(first.raw().body());
        assertThat(second.header("Location")).isEqualTo(first.header("Location"));
        assertThat(client.get(joint + "/ground-tests").body().path("items")).hasSize(1);
        var other = client.post(joint + "/ground-tests", Samples.test("0.85", "partial"), "Idempotency-Key", "field-1");
        assertThat(other.status()).isEqualTo(422);
        assertThat(other.body().path("type").asString()).isEqualTo("/problems/idempotency-key-reused");
    }

    @Test
    void manyEqualReportsAtOnceMakeOneRow() {
        String report = Samples.test("0.80", "none");
        List<Integer> statuses = java.util.stream.IntStream.range(0, 32)
                .parallel()
                .mapToObj(i -> client.post(joint + "/ground-tests", report, "Idempotency-Key", "crowd"))
                .map(Client.Answer::status)
                .toList();
        assertThat(statuses).contains(201).allMatch(status -> status == 201 || status == 409);
        assertThat(client.get(joint + "/ground-tests").body().path("items")).hasSize(1);
    }

    @Test
    void aVoidedTestIsKeptAndNotCounted() {
        JsonNode before = client.get(joint + "/next-charge").body();
        var logged = client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        String test = logged.header("Location");
        assertThat(client.post(test + "/void", "{}").status()).isEqualTo(400);
        var voided = client.post(test + "/void", "{\"reason\":\"the igniter failed\"}");
        assertThat(voided.status()).isEqualTo(200);
        assertThat(voided.body().path("test").path("counted").asBoolean()).isFalse();
        assertThat(voided.body().path("next")).isEqualTo(before);
        assertThat(client.post(test + "/void", "{\"reason\":\"again\"}").status())
                .isEqualTo(409);
        var back = client.post(test + "/unvoid", "{\"reason\":\"it had fired\"}");
        assertThat(back.body().path("next")).isEqualTo(logged.body().path("next"));
        assertThat(client.get(test).body().path("marks")).hasSize(2);
        assertThat(client.get(test).header("ETag")).isEqualTo("\"v2\"");
    }

    @Test
    void aDamagingChargeIsNeverSuggestedAgain() {
        String report = Samples.test("0.90", "separated").replaceFirst("\\{", "{\"damaged\":true,");
        var logged = client.post(joint + "/ground-tests", report);
        assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
        JsonNode next = logged.body().path("next");
        if (next.path("decision").asString().equals("fire")) {
            assertThat(next.path("charge").path("value").asDouble()).isLessThan(0.90);
        }
        assertThat(client.get(joint + "/flight-charge").status()).isEqualTo(409);
    }

    @Test
    void aSurpriseAsksAndMakesTheEvidenceConflicting() {
        for (int i = 0; i < 3; i++) {
            client.post(joint + "/ground-tests", Samples.test("0.70", "separated"));
        }
        var odd = client.post(joint + "/ground-tests", Samples.test("1.30", "none"));
        assertThat(odd.body().path("surprise").path("probability").asDouble()).isLessThan(0.02);
        assertThat(odd.body().path("surprise").path("questions")).isNotEmpty();
        assertThat(odd.body().path("next").path("evidence").asString()).isEqualTo("conflicting");
        String voidAt = odd.body().path("surprise").path("voidAt").asString();
        var voided = client.post(voidAt, "{\"reason\":\"two pins too many\"}");
        assertThat(voided.body().path("next").path("evidence").asString()).isNotEqualTo("conflicting");
    }

    @Test
    void aTestPointsAtTheSetupItWasFiredIn() {
        String changed = Samples.SETUP.replace("\"count\":3", "\"count\":2");
        client.put(joint + "/setup", changed, "If-Match", "*");
        var late = client.post(
                joint + "/ground-tests",
                Samples.test("0.80", "separated").replaceFirst("\\{", "{\"setupRevision\":1,"));
        assertThat(late.body().path("test").path("setupRevision").asInt()).isEqualTo(1);
        var now = client.post(joint + "/ground-tests", Samples.test("0.60", "separated"));
        assertThat(now.body().path("test").path("setupRevision").asInt()).isEqualTo(2);
        var none = client.post(
                joint + "/ground-tests",
                Samples.test("0.80", "separated").replaceFirst("\\{", "{\"setupRevision\":7,"));
        assertThat(none.status()).isEqualTo(400);
        assertThat(none.fault("/setupRevision").path("allowed").asString()).isNotEmpty();
    }

    @Test
    void theOffsetOfThePlaceComesBack() {
        var logged =
                client.post(joint + "/ground-tests", Samples.test("0.80", "none", "2026-05-03T10:20:00.123+05:30"));
        assertThat(client.get(logged.header("Location")).body().path("firedAt").asString())
                .isEqualTo("2026-05-03T10:20:00.123+05:30");
    }

    private static double value(JsonNode node, String field) {
        return node.path(field).path("value").asDouble();
    }

    @Test
    void whatToMindOfTheSetupStandsBesideEveryCharge() {
        String joint = client.joint();
        JsonNode warnings = client.get(joint + "/estimate").body().path("warnings");
        assertThat(warnings.size()).isPositive();
        assertThat(client.get(joint + "/next-charge").body().path("warnings")).isEqualTo(warnings);
        assertThat(client.get(joint + "/ladder").body().path("warnings")).isEqualTo(warnings);
        assertThat(client.get("/api/field-kit").body().at("/joints/0/flags")).isEqualTo(warnings);
        assertThat(client.post(joint + "/ground-tests", Samples.test("0.80", "none"))
                        .body()
                        .at("/next/warnings"))
                .isEqualTo(warnings);
    }
}
