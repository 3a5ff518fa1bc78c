package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** What the air of site and event does to the flight charge. */
@ServiceTest
class FlightAirApiTest {

    @Autowired
    Client client;

    String flight = "";

    @BeforeEach
    void prepare() {
        String joint = client.joint();
        client.post(joint + "/ground-tests", Samples.test("0.80", "separated", "2026-05-03T10:20:00+01:00"));
        client.post(joint + "/ground-tests", Samples.test("0.85", "separated", "2026-05-03T11:20:00+01:00"));
        flight = joint + "/flight-charge";
    }

    @Test
    void trappedAirLowersTheCeiling() {
        JsonNode ground = client.get(flight).body();
        assertThat(ground.has("air")).isFalse();
        JsonNode high =
                client.get(flight + "?siteElevation=0%20m&eventAltitude=3000m").body();
        // U.S. Standard Atmosphere 1976: 70121 Pa at 3000 m, so 31.204 of the 300 kPa are taken.
        assertThat(high.path("air").path("trapped").path("value").asDouble()).isCloseTo(31.2, offset(0.01));
        double ratio = ceiling(high) / ceiling(ground);
        assertThat(ratio).isCloseTo((300 - 31.204) / 300, offset(0.001));
        assertThat(high.path("primary").path("value").asDouble())
                .isEqualTo(ground.path("primary").path("value").asDouble());
    }

    @Test
    void theCeilingOfTheGroundIsNeverExceeded() {
        JsonNode ground = client.get(flight).body();
        for (String query :
                new String[] {"siteElevation=2000%20m", "siteElevation=4000%20ft&eventAltitude=9000%20ft"}) {
            JsonNode answer = client.get(flight + "?" + query).body();
            assertThat(ceiling(answer)).isLessThanOrEqualTo(ceiling(ground));
        }
    }

    @Test
    void thinAirIsFlagged() {
        assertThat(codes("?siteElevation=0%20m&eventAltitude=6100%20m")).contains("thin-air");
        assertThat(codes("?siteElevation=0%20m&eventAltitude=5900%20m")).doesNotContain("thin-air");
    }

    @Test
    void aBadAltitudeIsRefusedByName() {
        String[][] cases = {
            {"siteElevation=high", "siteElevation"},
            {"siteElevation=1200", "siteElevation"},
            {"siteElevation=1200%20furlong", "siteElevation"},
            {"eventAltitude=99%20m%20", "ok"},
            {"eventAltitude=90000%20m", "eventAltitude"},
            {"eventAltitude=1e9%20m", "eventAltitude"},
            {"siteElevation=1200%20m&eventAltitude=300%20m", "eventAltitude"}
        };
        for (String[] each : cases) {
            var answer = client.get(flight + "?" + each[0]);
            if (each[1].equals("ok")) {
                assertThat(answer.status()).isEqualTo(200);
            } else {
                assertThat(answer.status()).as(each[0]).isEqualTo(400);
                assertThat(answer.fault(each[1]).path("allowed").asString()).isNotEmpty();
            }
        }
    }

    private static double ceiling(JsonNode answer) {
        return answer.path("ceiling").path("value").asDouble();
    }

    private java.util.List<String> codes(String query) {
        return client.get(flight + query)
                .body()
                .path("warnings")
                .valueStream()
                .map(warning -> warning.path("code").asString())
                .toList();
    }
}
