package org.sunder.groundtest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** A speed says how good it is, and is believed as far as that. */
@ServiceTest
class SpeedUncertaintyApiTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog log;

    String airframe = "";
    String joint = "";

    @BeforeEach
    void aJoint() {
        log.empty();
        airframe = client.airframe();
        joint = client.joint(airframe);
    }

    @AfterEach
    void leaveNoSpeeds() {
        log.empty();
    }

    private static String report(String outcome, String more) {
        return Samples.test("1.00", outcome).replaceFirst("\\{", "{" + more + ",");
    }

    private static String timed(String percent) {
        return report("separated", "\"speed\":{\"value\":9.0,\"unit\":\"m/s\"},\"speedUncertaintyPercent\":" + percent);
    }

    @Test
    void comesBackWithItsDigitsInTheLogAndAsATable() {
        var logged = client.post(joint + "/ground-tests", timed("5.50"));
        assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
        var read = client.get(logged.header("Location"));
        assertThat(read.raw().body()).contains("\"speedUncertaintyPercent\":5.50");
        client.post(joint + "/ground-tests", report("separated", "\"speed\":{\"value\":9.0,\"unit\":\"m/s\"}"));
        assertThat(client.get(joint + "/ground-tests").body().path("items"))
                .as("newest first; the second one says nothing")
                .extracting(test -> test.has("speedUncertaintyPercent"))
                .containsExactlyInAnyOrder(true, false);
        String csv =
                client.get(airframe.replace("/api", "") + "/history.csv").raw().body();
        assertThat(csv)
                .contains("speed,speedUnit,speedUncertaintyPercent,containment")
                .contains("9.0,m/s,5.50,");
        String page = client.get(airframe.replace("/api", "")).raw().body();
        assertThat(page).contains("good to 5.5 %");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "2.99, 3 to 50",
        "50.01, 3 to 50",
        "-5, 3 to 50",
        "0, 3 to 50",
        "1E999999999, digits",
    })
    void refusesWhatIsOutOfRangeInWords(String percent, String allowed) {
        var refused = client.post(joint + "/ground-tests", timed(percent));
        assertThat(refused.status()).as(refused.raw().body()).isEqualTo(400);
        assertThat(refused.fault("/speedUncertaintyPercent").toString()).contains(allowed);
        assertThat(client.get(joint + "/ground-tests").body().path("items")).isEmpty();
    }

    @Test
    void belongsToASpeedAndIsANumber() {
        var alone = client.post(joint + "/ground-tests", report("separated", "\"speedUncertaintyPercent\":6"));
        assertThat(alone.status()).isEqualTo(400);
        assertThat(alone.fault("/speedUncertaintyPercent").path("detail").asString())
                .contains("but no speed");
        var words = client.post(joint + "/ground-tests", timed("\"fine\""));
        assertThat(words.status()).isEqualTo(400);
        assertThat(words.fault("/speedUncertaintyPercent").isMissingNode()).isFalse();
        assertThat(client.get(joint + "/ground-tests").body().path("items")).isEmpty();
    }

    /** The same speed, the better it is known, tells more; without a word it is good to 10 %. */
    @Test
    void isBelievedAsFarAsItIsGood() {
        double before = Double.POSITIVE_INFINITY;
        for (String percent : List.of("50", "10", "3")) {
            double now = width(timed(percent));
            assertThat(now).isLessThan(before);
            before = now;
        }
        assertThat(width(timed("10")))
                .isEqualTo(width(report("separated", "\"speed\":{\"value\":9.0,\"unit\":\"m/s\"}")));
    }

    /** A ceiling stated as a speed, and a film that says it was passed. */
    @Test
    void aMeasuredSpeedAboveTheOneStatedIsMarked() {
        String stated = Samples.JOINT.replaceFirst(
                "\\{\"gaugePressure\":\\{[^}]*}}", "{\"separationSpeed\":{\"value\":12,\"unit\":\"m/s\"}}");
        assertThat(stated).contains("separationSpeed");
        String limited = client.post(client.airframe() + "/joints", stated).header("Location");
        var within = client.post(
                limited + "/ground-tests", report("separated", "\"speed\":{\"value\":12,\"unit\":\"m/s\"}"));
        assertThat(within.status()).as(within.raw().body()).isEqualTo(201);
        assertThat(within.body().at("/test/beyond").toString()).doesNotContain("speed");
        var above = client.post(
                limited + "/ground-tests", report("separated", "\"speed\":{\"value\":40,\"unit\":\"ft/s\"}"));
        assertThat(above.body().at("/test/beyond").toString()).contains("\"speed\"");
        assertThat(client.get(above.header("Location")).body().path("beyond").toString())
                .contains("\"speed\"");
        // Where a gauge pressure is stated no speed is a limit.
        var other =
                client.post(joint + "/ground-tests", report("separated", "\"speed\":{\"value\":90,\"unit\":\"m/s\"}"));
        assertThat(other.body().at("/test/beyond").toString()).doesNotContain("speed");
    }

    private double width(String report) {
        log.empty();
        JsonNode correction = client.post(client.joint(client.airframe()) + "/ground-tests", report)
                .body()
                .path("correction");
        return Math.log(
                correction.path("high").asDouble() / correction.path("low").asDouble());
    }
}
