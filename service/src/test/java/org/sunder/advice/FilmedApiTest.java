package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Who films is advised with what a film is going to tell, and told what it does. */
@ServiceTest
class FilmedApiTest {

    private static final String FILMING = "/api/filming";

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

    private JsonNode read(String path) {
        var answer = client.get(path);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.body();
    }

    private JsonNode next(String query) {
        return read(joint + "/next-charge" + query);
    }

    private void begun() {
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        client.post(joint + "/ground-tests", Samples.test("0.95", "partial"));
    }

    private JsonNode film(String body) {
        var answer = client.put(FILMING, body);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void whoDoesNotFilmIsAnsweredAsEver() {
        begun();
        String before = client.get(joint + "/next-charge").raw().body();
        String ladder = client.get(joint + "/ladder?depth=2").raw().body();
        assertThat(before).doesNotContain("ilmed");
        assertThat(next("?filmed=5").path("filmed").isObject()).isTrue();
        film("{\"filming\":true}");
        assertThat(client.get(joint + "/next-charge").raw().body()).isNotEqualTo(before);
        assertThat(film("{\"filming\":false}").has("uncertaintyPercent")).isFalse();
        assertThat(client.get(joint + "/next-charge").raw().body()).isEqualTo(before);
        assertThat(client.get(joint + "/ladder?depth=2").raw().body()).isEqualTo(ladder);
        assertThat(read("/api/field-kit").has("filmedPercent")).isFalse();
    }

    @Test
    void whoSaysOnceThatEveryFiringIsFilmedIsAnsweredSoEverywhere() {
        begun();
        assertThat(read(FILMING).path("filming").asBoolean()).isFalse();
        assertThat(film("{\"filming\":true}").path("uncertaintyPercent").asInt())
                .isEqualTo(5);
        assertThat(read(FILMING).path("uncertaintyPercent").asInt()).isEqualTo(5);
        JsonNode next = next("");
        assertThat(next).isEqualTo(next("?filmed=5"));
        assertThat(next.path("basis").path("filmedPercent").asInt()).isEqualTo(5);
        JsonNode ladder = read(joint + "/ladder?depth=2");
        assertThat(ladder.path("first").path("charge")).isEqualTo(next.path("charge"));
        assertThat(ladder.path("basis")).isEqualTo(next.path("basis"));
        JsonNode kit = read("/api/field-kit");
        assertThat(kit.path("filmedPercent").asInt()).isEqualTo(5);
        assertThat(kit.at("/joints/0/advice")).isEqualTo(next);
        assertThat(kit.at("/joints/0/plan/charge")).isEqualTo(next.path("charge"));
        JsonNode logged = client.post(joint + "/ground-tests", Samples.test("1.10", "separated"))
                .body();
        assertThat(logged.path("next")).as("what a test is answered with").isEqualTo(next(""));
    }

    @Test
    void theAnswerSaysHowMuchLikelierAFiringIsTheLastTest() {
        begun();
        client.post(joint + "/ground-tests", Samples.test("1.15", "separated"));
        JsonNode filmed = next("?filmed=3&explain=true");
        assertThat(filmed.path("decision").asString()).isEqualTo("fire");
        assertThat(filmed.path("cautions")).isNotEmpty();
        JsonNode films = filmed.path("filmed");
        assertThat(films.path("uncertaintyPercent").asDouble()).isEqualTo(3);
        double with = films.path("lastTest").asDouble();
        double without = films.path("lastTestWithout").asDouble();
        assertThat(with).isBetween(0.0, 1.0).isGreaterThan(without);
        assertThat(films.path("text").asString())
                .isEqualTo(
                        "The chance that this firing is the last test is %d in 100 with its film read, %d in 100 without."
                                .formatted(Math.round(100 * with), Math.round(100 * without)));
        assertThat(filmed.path("compared")).isNotEmpty();
        assertThat(filmed.path("then")).hasSize(3);
        // Safeguards are not asked about films: never above the ceiling, never more than a quarter above what was
        // fired.
        double charge = filmed.path("charge").path("value").asDouble();
        assertThat(charge)
                .isLessThanOrEqualTo(filmed.path("ceiling").path("value").asDouble())
                .isBetween(0.95, 1.15);
    }

    @Test
    void aFinerFilmTellsMore() {
        begun();
        assertThat(next("?filmed=3").at("/filmed/lastTest").asDouble())
                .isGreaterThanOrEqualTo(
                        next("?filmed=50").at("/filmed/lastTest").asDouble());
    }

    /** Where the setup states no masses, a speed tells nothing: the answer is as without films. */
    @Test
    void aSetupThatPredictsNoSpeedIsAnsweredAsWithoutFilms() {
        String bare = Samples.SETUP.replaceFirst("\"aftMass\":\\{[^}]*\\},", "");
        assertThat(client.put(joint + "/setup", bare, "If-Match", "*").status()).isEqualTo(200);
        JsonNode plain = next("");
        film("{\"filming\":true}");
        assertThat(next("")).isEqualTo(plain);
        assertThat(next("?filmed=5")).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.9", "51", "-5", "five", "NaN"})
    void isRefusedOutsideOfWhatAReadingCanBe(String percent) {
        var answer = client.get(joint + "/next-charge?filmed=" + percent);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(400);
        ObjectNode fault = (ObjectNode) answer.body().at("/errors/0");
        assertThat(fault.path("pointer").asString()).contains("filmed");
        assertThat(answer.raw().body()).contains(percent);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{}|/filming",
                "{\"filming\":true,\"uncertaintyPercent\":2}|/uncertaintyPercent",
                "{\"filming\":true,\"uncertaintyPercent\":51}|/uncertaintyPercent",
                "{\"filming\":true,\"uncertaintyPercent\":\"five\"}|/uncertaintyPercent",
                "{\"filming\":false,\"uncertaintyPercent\":5}|uncertaintyPercent",
                "{\"filming\":\"now and then\"}|/filming",
                "{\"filming\":true,\"rate\":240}|/rate"
            })
    void whatCannotBeIsNamedAndNothingIsChosen(String body, String pointer) {
        var answer = client.put(FILMING, body);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(400);
        assertThat(answer.body().at("/errors/0/pointer").asString()).isEqualTo(pointer);
        assertThat(read(FILMING).path("filming").asBoolean()).isFalse();
    }
}
