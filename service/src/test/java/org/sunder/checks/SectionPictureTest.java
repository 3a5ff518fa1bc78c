package org.sunder.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** A compartment in section: what is in it told apart without colour, and drawn inside of the bore. */
@ServiceTest
class SectionPictureTest {

    @Autowired
    Client client;

    @Test
    void eachContentHasAHatchOfItsOwn() throws Exception {
        String svg = drawn();
        assertThat(svg).contains("class=\"bay\"", "class=\"hollow\"", "bay pushed in 0.298 L");
        assertThat(all(svg, "class=\"soft\"")).hasSize(2);
        List<String> hatches = all(svg, "class=\"hatch\"[^>]* d=\"([^\"]*)\"");
        assertThat(hatches).hasSize(2);
        assertThat(rises(hatches.get(0))).as("the parachute's lines").isTrue();
        assertThat(rises(hatches.get(1))).as("the harness's lines").isFalse();
    }

    /** By hand: 620 mm of nose with 40 mm cut off are 580 mm on 416 px, so 46 mm of radius are 33 px about an axis at 63 px. */
    @Test
    void hatchesStayInsideOfTheBore() throws Exception {
        for (String hatch : all(drawn(), "class=\"hatch\"[^>]* d=\"([^\"]*)\"")) {
            assertThat(Pattern.compile("[ML]([\\d.]+) ([\\d.]+)").matcher(hatch).results())
                    .isNotEmpty()
                    .allSatisfy(point ->
                            assertThat(Double.parseDouble(point.group(2))).isBetween(29.9, 96.1));
        }
    }

    private static boolean rises(String hatch) {
        MatchResult line = Pattern.compile("M([\\d.]+) ([\\d.]+)L([\\d.]+) ([\\d.]+)")
                .matcher(hatch)
                .results()
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(line.group(4)) < Double.parseDouble(line.group(2));
    }

    private static List<String> all(String svg, String pattern) {
        return Pattern.compile(pattern)
                .matcher(svg)
                .results()
                .map(found -> found.group(found.groupCount()))
                .toList();
    }

    private String drawn() throws Exception {
        HttpRequest asked = client.request(
                        "/api/checks/setup", "Accept", "image/svg+xml", "Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"setup\":" + Samples.SETUP + "}"))
                .build();
        return HttpClient.newHttpClient()
                .send(asked, HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
