package org.sunder.groundtest;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** What was never used can be deleted; what has a log cannot, whoever asks and however. */
@ServiceTest
class EnteredByMistakeTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String airframe;
    private String joint;

    @BeforeEach
    void aJoint() {
        emptyLog.empty();
        airframe = client.post("/api/airframes", Samples.AIRFRAME).header("Location");
        joint = client.post(airframe + "/joints", Samples.JOINT).header("Location");
    }

    @Test
    void anUnusedJointGoesWithItsSetupsAndOutOfTheLoadOuts() {
        String other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"))
                .header("Location");
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "*");
        client.post(airframe + "/load-outs", Samples.loadOut(id(joint)));
        String both = Samples.loadOut(id(joint));
        String second = Samples.loadOut(id(other));
        client.post(
                airframe + "/load-outs",
                both.replace("}]}]}", "}]}," + second.replaceAll("^.*\"compartments\":\\[", ""))
                        .replace("long case, big main", "both filled"));
        assertThat(client.get(airframe + "/load-outs").body().path("items")).hasSize(2);
        assertThat(client.delete(joint).status()).isEqualTo(428);
        assertThat(client.delete(joint, "If-Match", "\"v0\"").status()).isEqualTo(412);
        assertThat(client.delete(joint, "If-Match", "\"v1\"").status()).isEqualTo(204);
        assertThat(client.get(joint).status()).isEqualTo(404);
        assertThat(client.get(joint + "/next-charge").status()).isEqualTo(404);
        var left = client.get(airframe + "/load-outs").body().path("items");
        assertThat(left).hasSize(1);
        assertThat(left.toString()).contains("both filled", id(other)).doesNotContain(id(joint));
        assertThat(client.get("/api/export").raw().body()).doesNotContain(id(joint));
        assertThat(client.get(other).status()).isEqualTo(200);
    }

    @Test
    void aJointThatAnythingWasFiredAtStays() {
        String test = client.post(joint + "/ground-tests", Samples.test("0.85", "none"))
                .header("Location");
        String before = client.get("/api/export").raw().body();
        assertThat(refusal(joint)).contains("One firing is logged there");
        assertThat(refusal(airframe + "/unused")).contains("One firing is logged there");
        assertThat(client.get("/api/export").raw().body()).isEqualTo(before);
        client.post(test + "/void", "{\"reason\":\"the igniter failed\"}");
        assertThat(refusal(joint)).as("void, and still in the log").contains("One firing is logged there");
        assertThat(client.get(joint).status()).isEqualTo(200);
    }

    @Test
    void aFlightIsALogToo() {
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        String flown = client.post(airframe + "/joints", Samples.JOINT).header("Location");
        client.post(flown + "/flight-events", Samples.test("1.00", "separated"));
        assertThat(refusal(flown)).contains("One firing is logged there");
        assertThat(refusal(airframe + "/unused")).contains("2 firings are logged");
    }

    @Test
    void anUnusedAirframeGoesWithAllThatHangsOnIt() {
        client.post(airframe + "/load-outs", Samples.loadOut(id(joint)));
        assertThat(client.delete(airframe + "/unused").status()).isEqualTo(428);
        assertThat(client.delete(airframe + "/unused", "If-Match", "\"v0\"").status())
                .isEqualTo(204);
        assertThat(client.get(airframe).status()).isEqualTo(404);
        assertThat(client.get("/api/export").raw().body()).doesNotContain(id(airframe), id(joint));
        assertThat(client.delete(airframe + "/unused", "If-Match", "*").status())
                .isEqualTo(404);
    }

    @Test
    void aJointOfAnAirframePutAwayStaysWithIt() {
        client.delete(airframe, "If-Match", "*");
        assertThat(refusal(joint)).contains("archived");
        assertThat(client.delete(airframe + "/unused", "If-Match", "*").status())
                .as("the airframe itself may go")
                .isEqualTo(204);
    }

    private String refusal(String path) {
        var answer = client.delete(path, "If-Match", "*");
        assertThat(answer.status()).isEqualTo(409);
        return answer.body().path("detail").asString();
    }

    private static String id(String address) {
        return address.replaceAll(".*/", "");
    }
}
