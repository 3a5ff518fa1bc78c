package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** What measured separations asked of harness and bulkheads. */
@ServiceTest
class LoadsApiTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog log;

    String joint = "";

    @BeforeEach
    void aJoint() {
        log.empty();
        joint = client.joint(client.airframe());
    }

    @AfterEach
    void away() {
        log.empty();
    }

    private JsonNode loads(String query) {
        var answer = client.get(joint + "/loads" + query);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.body();
    }

    private String separated(String speed) {
        var logged = client.post(
                joint + "/ground-tests",
                Samples.test("1.00", "separated")
                        .replaceFirst(
                                "\\{",
                                "{\"speed\":{\"value\":" + speed
                                        + ",\"unit\":\"m/s\"},\"speedUncertaintyPercent\":6,"));
        assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
        return logged.header("Location");
    }

    /** m_r of 0.9 and 4.1 kg is 0.738 kg: ½·0.738·10² = 36.9 J, and over 80 mm of stretch 2·36.9/0.08 = 922.5 N. */
    @Test
    void standBesideWhatTheFormulaPredicts() {
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        String test = separated("10.0");
        JsonNode answer = loads("?stretch=80%20mm");
        assertThat(answer.path("partings")).hasSize(1);
        JsonNode one = answer.at("/partings/0");
        assertThat(test).endsWith(one.path("testId").asString());
        assertThat(one.at("/speed/value").asDouble()).isEqualTo(10);
        assertThat(one.path("speedUncertaintyPercent").asDouble()).isEqualTo(6);
        assertThat(one.path("energyJoules").asDouble()).isEqualTo(36.9);
        assertThat(one.at("/peakLoad/value").asDouble()).isCloseTo(922.5, within(1.0));
        double predicted = one.at("/predicted/value").asDouble();
        assertThat(one.path("ratio").asDouble()).isCloseTo(10 / predicted, withinPercentage(1));
        double pressure = one.at("/leastPressure/value").asDouble();
        assertThat(one.at("/bulkheadForce/value").asDouble())
                .as("on a disc of 92 mm")
                .isCloseTo(1000 * pressure * Math.PI / 4 * 0.092 * 0.092, withinPercentage(0.5));
        assertThat(one.has("warning")).isFalse();
        assertThat(answer.path("cautions")).isNotEmpty();
        assertThat(answer.at("/basis/tests").asInt()).isEqualTo(2);
        assertThat(loads("").at("/partings/0").has("peakLoad")).isFalse();
        assertThat(loads("?units=us").at("/partings/0/speed/unit").asString()).isEqualTo("ft/s");
    }

    @Test
    void aSpeedThatTakesMorePressureThanWasStatedIsWarnedOf() {
        separated("30.0");
        JsonNode one = loads("").at("/partings/0");
        assertThat(one.at("/leastPressure/value").asDouble()).isGreaterThan(300);
        assertThat(one.path("warning").asString())
                .contains(
                        "300 kPa was stated",
                        "look over bulkheads, harness and fittings before anything is fired again");
    }

    @Test
    void aSpeedAboveTheOneStatedIsWarnedOf() {
        String slow = Samples.SETUP.replace(
                "{\"gaugePressure\":{\"value\":300,\"unit\":\"kPa\"}}",
                "{\"separationSpeed\":{\"value\":12,\"unit\":\"m/s\"}}");
        assertThat(client.put(joint + "/setup", slow, "If-Match", "*").status()).isEqualTo(200);
        separated("11.9");
        separated("12.1");
        JsonNode all = loads("").path("partings");
        assertThat(all.get(0).path("warning").asString()).contains("faster than the 12 m/s stated for the harness");
        assertThat(all.get(1).has("warning")).isFalse();
    }

    @Test
    void voidTestsAndSilentOnesAreLeftOut() {
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        String test = separated("9.0");
        assertThat(loads("").path("partings")).hasSize(1);
        client.post(test + "/void", "{\"reason\":\"wrong film\"}");
        assertThat(loads("").path("partings")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"80", "mm", "0%20mm", "-80%20mm", "200%20m", "80%20kg"})
    void aHarnessThatStretchesSoIsRefused(String stretch) {
        var answer = client.get(joint + "/loads?stretch=" + stretch);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(400);
        assertThat(answer.body().at("/errors/0/pointer").asString()).contains("stretch");
        assertThat(answer.body().at("/errors/0/allowed").asString()).isNotEmpty();
    }
}
