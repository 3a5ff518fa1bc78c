package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.persistence.DurableTransactions;
import org.sunder.persistence.StaleFleetException;
import tools.jackson.databind.JsonNode;

/** What one joint teaches reaches the next one; flights and speeds teach too. */
@ServiceTest
class TeachingTest {

    @Autowired
    Client client;

    @Autowired
    Findings findings;

    @Autowired
    FleetSnapshots fleets;

    @Autowired
    TestLogging logging;

    @Autowired
    DurableTransactions transactions;

    @Autowired
    EmptyLog log;

    String joint = "";

    @BeforeEach
    void prepare() {
        log.empty();
        joint = joint();
    }

    /** A measured speed makes the fleet's model five times as large, for every test after this one. */
    @AfterEach
    void leaveNoSpeeds() {
        log.empty();
    }

    @Test
    void aNewAirframeStartsNarrowerThanTheFirstOneDid() {
        for (String outcome : List.of("none", "partial", "separated", "separated")) {
            client.post(joint + "/ground-tests", Samples.test("0.85", outcome));
        }
        JsonNode fleet = client.get("/api/fleet/correction").body();
        assertThat(width(fleet.path("newAirframe"))).isLessThan(width(fleet.path("beforeAnyTest")));
        JsonNode fresh = client.get(joint() + "/estimate").body();
        assertThat(fresh.path("basis").path("tests").asInt()).isZero();
        assertThat(fresh.path("basis").path("fleetTests").asInt()).isGreaterThanOrEqualTo(4);
        // 2.057 / 0.4861 is what the very first joint of a flyer starts from in this setup.
        assertThat(width(fresh.path("correction"))).isLessThan(Math.log(2.057 / 0.4861));
    }

    @Test
    void tellsHowWellItKnowsWhatAllJointsShare() {
        JsonNode shared = client.get("/api/fleet/correction").body().path("shared");
        // Quantiles of the priors by hand: median · e^(±1.645 · 0.5); half-normal quantiles 0.0627, 0.6745, 1.960.
        is(shared.path("scatter"), 0.0439, 0.1, 0.2276);
        is(shared.path("band"), 0.0659, 0.15, 0.3414);
        is(shared.path("airframes"), 0.0157, 0.1686, 0.4900);
        is(shared.path("joints"), 0.0094, 0.1012, 0.2940);
        is(shared.path("setups"), 0.0063, 0.0674, 0.1960);
        for (String charge : List.of("0.70", "0.80", "0.90", "1.00")) {
            client.post(
                    joint + "/ground-tests", Samples.test(charge, charge.compareTo("0.85") < 0 ? "none" : "separated"));
        }
        JsonNode after = client.get("/api/fleet/correction").body().path("shared");
        assertThat(width(after.path("scatter"))).isLessThan(width(shared.path("scatter")));
        assertThat(after.path("band").path("median").asDouble()).isLessThan(0.15);
    }

    private static void is(JsonNode interval, double low, double median, double high) {
        assertThat(interval.path("low").asDouble()).isCloseTo(low, within(0.001));
        assertThat(interval.path("median").asDouble()).isCloseTo(median, within(0.001));
        assertThat(interval.path("high").asDouble()).isCloseTo(high, within(0.002));
    }

    @Test
    void aFlightTeachesButGivesNoFlightCharge() {
        JsonNode before = client.get(joint + "/estimate").body().path("correction");
        var flown = client.post(joint + "/flight-events", Samples.test("0.90", "separated"));
        assertThat(flown.status()).as(flown.raw().body()).isEqualTo(201);
        assertThat(flown.body().path("test").path("occasion").asString()).isEqualTo("flight");
        assertThat(flown.body().path("correction")).isNotEqualTo(before);
        assertThat(client.get(joint + "/flight-events").body().path("items")).hasSize(1);
        assertThat(client.get(joint + "/ground-tests").body().path("items")).isEmpty();
        assertThat(client.get(joint + "/flight-charge").status()).isEqualTo(409);
        var voided = client.post(flown.header("Location") + "/void", "{\"reason\":\"drag parted it\"}");
        assertThat(voided.body().path("correction")).isEqualTo(before);
    }

    @Test
    void aMeasuredSpeedNarrowsTheCorrection() {
        String plain = Samples.test("1.00", "separated");
        JsonNode without = client.post(joint + "/ground-tests", plain).body().path("correction");
        String other = joint();
        double predicted = client.get(other + "/estimate")
                .body()
                .path("separationSpeed")
                .path("value")
                .asDouble();
        assertThat(predicted).isPositive();
        var timed = client.post(
                other + "/ground-tests", plain.replaceFirst("\\{", "{\"speed\":{\"value\":9.0,\"unit\":\"m/s\"},"));
        assertThat(timed.status()).as(timed.raw().body()).isEqualTo(201);
        assertThat(width(timed.body().path("correction"))).isLessThan(width(without));
        var odd = client.post(
                other + "/ground-tests",
                Samples.test("1.00", "none").replaceFirst("\\{", "{\"speed\":{\"value\":9.0,\"unit\":\"m/s\"},"));
        assertThat(odd.status()).isEqualTo(400);
        assertThat(odd.fault("/speed").path("allowed").asString()).contains("separated");
    }

    @Test
    void aModelChangedIsTheSameToTheLastBitAsOneMadeAnew() {
        findings.ask(fleets.current(), model -> model);
        client.post(joint + "/ground-tests", Samples.test("0.85", "partial"));
        FleetSnapshot fleet = fleets.current();
        FleetModel changed = findings.ask(fleet, found -> found);
        FleetModel anew = FleetModel.of(fleet.log(), Priors.standard());
        for (LoggedJoint logged : fleet.joints()) {
            Leaf leaf = fleet.leaf(logged.setup());
            assertThat(changed.leaf(leaf).correctionFactor())
                    .isEqualTo(anew.leaf(leaf).correctionFactor());
        }
    }

    @Test
    void aFleetWrittenIsTheFleetReadAnew() {
        FleetSnapshot before = fleets.current();
        client.post(joint + "/ground-tests", Samples.test("0.85", "partial"));
        String test = client.post(joint + "/flight-events", Samples.test("0.850", "separated"))
                .header("Location");
        client.post(test + "/void", "{\"reason\":\"drag parted it\"}");
        FleetSnapshot written = fleets.current();
        assertThat(written.version()).isEqualTo(before.version() + 3);
        FleetSnapshot read = fleets.read();
        assertThat(read.log()).isEqualTo(written.log());
        assertThat(List.copyOf(read.joints())).isEqualTo(List.copyOf(written.joints()));
    }

    @Test
    void aFleetIsReadOnceForEachVersion() {
        FleetSnapshot fleet = fleets.current();
        client.get(joint + "/next-charge");
        assertThat(fleets.current()).isSameAs(fleet);
        client.airframe();
        assertThat(fleets.current()).isNotSameAs(fleet);
    }

    @Test
    void aTestThatRestsOnAnotherFleetIsNotStored() {
        UUID id = UUID.fromString(joint.substring(joint.lastIndexOf('/') + 1));
        Report report = new Report(
                Mass.ofKilograms(0.00085),
                Outcome.PARTIAL,
                false,
                null,
                null,
                null,
                OffsetDateTime.parse("2026-05-03T10:20:00+01:00"),
                null);
        LogDraft draft = logging.draft(id, null, Occasion.GROUND, report);
        client.airframe();
        assertThatThrownBy(() -> transactions.run(() -> logging.add(draft))).isInstanceOf(StaleFleetException.class);
        assertThat(client.get(joint + "/ground-tests").body().path("items")).isEmpty();
    }

    @Test
    void aFlightInThePresentSetupIsNoChangeOfSetup() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "none"));
        var flown = client.post(joint + "/flight-events", Samples.test("1.00", "separated"));
        assertThat(flown.body().path("next").path("evidence").asString()).isEqualTo("building");
    }

    private String joint() {
        return client.joint();
    }

    private static double width(JsonNode correction) {
        return Math.log(
                correction.path("high").asDouble() / correction.path("low").asDouble());
    }
}
