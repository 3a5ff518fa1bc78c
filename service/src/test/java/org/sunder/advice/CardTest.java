package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** The card to print says why where its tree may surprise. */
@ServiceTest
class CardTest {

    private static final String REASON = "can follow a test that did not separate";

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String joint = "";

    @BeforeEach
    void aJoint() {
        emptyLog.empty();
        String airframe = client.post("/api/airframes", Samples.AIRFRAME).header("Location");
        joint = client.post(airframe + "/joints", Samples.JOINT).header("Location");
    }

    @Test
    void givesNoReasonWhereEachFlightFollowsASeparation() {
        assertThat(fliesAfterLess(ladder())).isFalse();
        assertThat(card()).contains("Fire ").doesNotContain(REASON);
    }

    /** Followed as advised, with the outcome that a joint of 0.8 g gives, until the tree can end without a separation. */
    @Test
    void saysWhyAFlightMayFollowATestThatDidNotSeparate() {
        for (int i = 0; i < 12 && !fliesAfterLess(ladder()); i++) {
            JsonNode next = client.get(joint + "/next-charge").body();
            assertThat(next.path("decision").asString()).isEqualTo("fire");
            double charge = next.at("/charge/value").asDouble();
            client.post(
                    joint + "/ground-tests", Samples.test(String.valueOf(charge), charge < 0.8 ? "none" : "separated"));
        }
        assertThat(fliesAfterLess(ladder())).isTrue();
        assertThat(card()).contains(REASON);
    }

    private JsonNode ladder() {
        return client.get(joint + "/ladder?depth=2").body().path("first");
    }

    private String card() {
        return client.get(joint + "/ladder?depth=2", "Accept", "text/html")
                .raw()
                .body();
    }

    private static boolean fliesAfterLess(JsonNode step) {
        return step.path("then")
                .valueStream()
                .anyMatch(branch -> (!branch.path("outcome").asString().equals("separated")
                                && branch.path("step").has("flightCharge"))
                        || fliesAfterLess(branch.path("step")));
    }
}
