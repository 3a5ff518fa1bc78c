package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** The numbers behind a charge, and ways out when no charge can do. */
@ServiceTest
class ReasonsTest {

    @Autowired
    Client client;

    private String joint(String body) {
        String airframe = client.airframe();
        return client.post(airframe + "/joints", body).header("Location");
    }

    @Test
    void theNumbersBehindAChargeAreGivenWhenAskedFor() {
        String joint = joint(Samples.JOINT);
        JsonNode plain = client.get(joint + "/next-charge").body();
        assertThat(plain.path("compared")).isEmpty();
        JsonNode explained = client.get(joint + "/next-charge?explain=true").body();
        assertThat(explained.path("charge")).isEqualTo(plain.path("charge"));
        JsonNode best = null;
        for (JsonNode compared : explained.path("compared")) {
            best = best == null
                            || compared.path("loss").asDouble()
                                    < best.path("loss").asDouble()
                    ? compared
                    : best;
        }
        assertThat(best).isNotNull();
        assertThat(best.path("charge")).isEqualTo(explained.path("charge"));
    }

    @Test
    void aTargetAboveTheCeilingComesWithOtherSetups() {
        String joint = joint(Samples.JOINT.replace("\"value\":300,\"unit\":\"kPa\"", "\"value\":200,\"unit\":\"kPa\""));
        JsonNode next = client.get(joint + "/next-charge").body();
        for (int i = 0; i < 6 && next.path("decision").asString().equals("fire"); i++) {
            String grams = next.path("charge").path("value").asString();
            next = client.post(joint + "/ground-tests", Samples.test(grams, "none"))
                    .body()
                    .path("next");
        }
        JsonNode stuck = client.get(joint + "/next-charge").body();
        assertThat(stuck.path("decision").asString()).isEqualTo("change-setup");
        assertThat(stuck.path("options")).isNotEmpty();
        for (JsonNode option : stuck.path("options")) {
            assertThat(option.path("targetCharge").path("value").asDouble())
                    .isLessThanOrEqualTo(option.path("ceiling").path("value").asDouble());
        }
        assertThat(stuck.path("cautions")).isNotEmpty();
    }
}
