package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Who films is advised with what a film is going to tell, and told what it does. */
@ServiceTest
class FilmedApiTest {

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

    private JsonNode next(String query) {
        var answer = client.get(joint + "/next-charge" + query);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void whoDoesNotFilmIsAnsweredAsEver() {
        JsonNode before = next("");
        assertThat(before.has("filmed")).isFalse();
        next("?filmed=5");
        assertThat(next("")).isEqualTo(before);
    }

    @Test
    void aFilmMakesItLikelierThatAFiringIsTheLastTest() {
        client.post(joint + "/ground-tests", Samples.test("0.80", "partial"));
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        JsonNode filmed = next("?filmed=5&explain=true");
        assertThat(filmed.path("decision").asString()).isEqualTo("fire");
        assertThat(filmed.path("cautions")).isNotEmpty();
        JsonNode films = filmed.path("filmed");
        assertThat(films.path("uncertaintyPercent").asDouble()).isEqualTo(5);
        double with = films.path("lastTest").asDouble();
        double without = films.path("lastTestWithout").asDouble();
        assertThat(with).isBetween(0.0, 1.0).isGreaterThanOrEqualTo(without - 0.05);
        assertThat(filmed.path("compared")).isNotEmpty();
        // Safeguards are not asked about films: never above the ceiling, never more than was just seen to separate.
        double charge = filmed.path("charge").path("value").asDouble();
        assertThat(charge).isLessThanOrEqualTo(filmed.path("ceiling").path("value").asDouble());
        assertThat(charge).isLessThanOrEqualTo(1.25);
        assertThat(filmed.path("then")).hasSize(3);
    }

    @Test
    void aFinerFilmTellsMore() {
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        double fine = lastTest("3");
        double coarse = lastTest("50");
        assertThat(fine).isGreaterThanOrEqualTo(coarse);
    }

    private double lastTest(String percent) {
        return next("?filmed=" + percent).path("filmed").path("lastTest").asDouble();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.9", "51", "-5", "five"})
    void isRefusedOutsideOfWhatAReadingCanBe(String percent) {
        var answer = client.get(joint + "/next-charge?filmed=" + percent);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.raw().body()).contains("filmed");
    }
}
