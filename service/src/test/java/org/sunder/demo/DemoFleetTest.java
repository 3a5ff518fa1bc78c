package org.sunder.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import org.sunder.Client;
import tools.jackson.databind.JsonNode;

/** The demo fleet shows every kind of evidence that tests can leave. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:demo;DB_CLOSE_DELAY=-1")
@Import(Client.class)
@ActiveProfiles("demo")
@DirtiesContext
class DemoFleetTest {

    @Autowired
    Client client;

    @Test
    void threeAirframesShowBuildingSufficientStaleAndConflicting() {
        JsonNode airframes = client.get("/api/airframes").body().path("items");
        assertThat(airframes).hasSize(3);
        List<String> evidence = new ArrayList<>();
        for (JsonNode airframe : airframes) {
            String joints = "/api/airframes/" + airframe.path("id").asString() + "/joints";
            for (JsonNode joint : client.get(joints).body().path("items")) {
                JsonNode next = client.get("/api/joints/" + joint.path("id").asString() + "/next-charge")
                        .body();
                evidence.add(next.path("evidence").asString());
                assertThat(next.path("cautions")).isNotEmpty();
            }
        }
        assertThat(evidence).containsExactlyInAnyOrder("sufficient", "building", "stale", "conflicting");
    }
}
