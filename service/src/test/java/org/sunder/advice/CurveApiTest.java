package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;

/** The curve of a joint, as numbers and as a picture. */
@ServiceTest
class CurveApiTest {

    @Autowired
    Client client;

    private String joint;

    @BeforeEach
    void aJoint() {
        joint = client.joint();
    }

    @Test
    void risesWithTheChargeInsideItsBand() {
        log("0.85", "separated");
        double last = 0;
        for (JsonNode point : client.get(joint + "/curve").body().path("points")) {
            double separated = point.path("separated").asDouble();
            assertThat(separated).isBetween(last, 1.0);
            assertThat(point.path("low").asDouble())
                    .isLessThanOrEqualTo(point.path("high").asDouble());
            last = separated;
        }
        assertThat(last).isGreaterThan(0.98);
    }

    @Test
    void agreesWithTheChancesOfTheNextCharge() {
        JsonNode next = client.get(joint + "/next-charge").body();
        double charge = next.path("charge").path("value").asDouble();
        assertThat(at(client.get(joint + "/curve").body(), charge))
                .isCloseTo(next.path("probability").path("separated").asDouble(), within(0.01));
    }

    @Test
    void marksEveryFiringAndCarriesThoseOfAnotherSetupOver() {
        String test = log("0.85", "partial").header("Location");
        client.post(test + "/void", "{\"reason\":\"a pin was missing\"}");
        String fewerPins = Samples.SETUP.replace("\"count\":3", "\"count\":2");
        assertThat(client.put(joint + "/setup", fewerPins, "If-Match", "\"v0\"").status())
                .isEqualTo(200);
        JsonNode mark = client.get(joint + "/curve").body().path("tests").get(0);
        assertThat(mark.path("counted").asBoolean()).isFalse();
        assertThat(mark.path("charge").path("value").asString()).isEqualTo("0.85");
        // By hand: (2·205.6 + 15) / (3·205.6 + 15) = 0.6746 of the force, so of the charge.
        assertThat(mark.path("comparable").path("value").asDouble()).isCloseTo(0.85 * 0.6746, within(0.001));
    }

    @Test
    void theBandNarrowsWithTests() {
        double before = width();
        log("0.85", "separated");
        log("0.65", "none");
        assertThat(width()).isLessThan(before);
    }

    @Test
    void thePictureSaysInWordsWhatItShows() throws Exception {
        log("0.85", "separated");
        Document picture = picture();
        assertThat(picture.getElementsByTagName("desc").item(0).getTextContent())
                .contains("the chance is")
                .contains("Fired: 1, of these separated: 1");
        List<String> words = java.util.stream.IntStream.range(
                        0, picture.getElementsByTagName("text").getLength())
                .mapToObj(i -> picture.getElementsByTagName("text").item(i).getTextContent())
                .toList();
        assertThat(words).contains("charge, g", "50 %", "handbook 0.66 g", "never above 2.08 g →");
    }

    private Document picture() throws Exception {
        var asked = client.request(joint + "/curve", "Accept", "image/svg+xml").build();
        String svg = HttpClient.newHttpClient()
                .send(asked, HttpResponse.BodyHandlers.ofString())
                .body();
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private Client.Answer log(String grams, String outcome) {
        return client.post(joint + "/ground-tests", Samples.test(grams, outcome));
    }

    /** Range of charges over which the predictive chance goes from 10 to 90 %. */
    private double width() {
        double low = 0;
        double high = 0;
        for (JsonNode point : client.get(joint + "/curve").body().path("points")) {
            double charge = point.path("charge").path("value").asDouble();
            double separated = point.path("separated").asDouble();
            low = separated < 0.1 ? charge : low;
            high = separated < 0.9 ? charge : high;
        }
        return high - low;
    }

    private static double at(JsonNode curve, double charge) {
        JsonNode before = curve.path("points").get(0);
        for (JsonNode point : curve.path("points")) {
            double x = point.path("charge").path("value").asDouble();
            if (x >= charge) {
                double x0 = before.path("charge").path("value").asDouble();
                double share = x == x0 ? 0 : (charge - x0) / (x - x0);
                double y0 = before.path("separated").asDouble();
                return y0 + share * (point.path("separated").asDouble() - y0);
            }
            before = point;
        }
        throw new AssertionError("the curve ends below " + charge);
    }
}
