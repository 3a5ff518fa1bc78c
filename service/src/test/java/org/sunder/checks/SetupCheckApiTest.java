package org.sunder.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;

/** A setup worked out before it is stored. */
@ServiceTest
class SetupCheckApiTest {

    private static final String PATH = "/api/checks/setup";

    @Autowired
    Client client;

    @Test
    void saysWhatTheEstimateOfTheStoredSetupSays() {
        JsonNode checked = client.post(PATH, body(Samples.SETUP)).body();
        String joint = client.joint();
        JsonNode estimate = client.get(joint + "/estimate").body();
        for (String field :
                new String[] {"freeVolume", "retention", "thresholdPressure", "handbookCharge", "ceiling", "warnings"
                }) {
            assertThat(checked.path(field)).as(field).isEqualTo(estimate.path(field));
        }
        assertThat(checked.path("cautions")).isNotEmpty();
    }

    @Test
    void pointsAtEveryFaultAndStoresNothing() {
        var answer = client.post(
                PATH, body(Samples.SETUP.replace("\"M2.5\"", "\"M7\"").replace("620", "0.2")));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.fault("/setup/pins/0/thread").isMissingNode()).isFalse();
    }

    @Test
    void aBayWiderThanTheNoseWhereItEndsIsRefusedWithBothWidthsAndTheDepth() {
        var answer = client.post(PATH, body(Samples.SETUP.replace("\"value\":45", "\"value\":150")));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.fault("/setup/contents/0/depth").path("detail").asString(""))
                .contains("bay pushed in is 92 mm wide, but the cavity only 86.6", "at 150 mm deep");
    }

    @Test
    void drawsTheCompartmentWithWhatIsInItToScale() throws Exception {
        Document picture = picture(Samples.SETUP);
        assertThat(picture.getElementsByTagName("desc").item(0).getTextContent())
                .contains("580 mm deep")
                .contains("bay pushed in 0.298 L")
                .contains("free for gas 1.52 L");
        NodeList lines = picture.getElementsByTagName("text");
        String words = "";
        for (int i = 0; i < lines.getLength(); i++) {
            words += lines.item(i).getTextContent() + "|";
        }
        assertThat(words).contains("joint|", "closed end|", "main parachute", "harness", "100 mm|");
    }

    @Test
    void keepsANameThatLooksLikeMarkupText() throws Exception {
        Document picture = picture(Samples.SETUP.replace("harness", "<b>&amp;</b>"));
        assertThat(picture.getElementsByTagName("b").getLength()).isZero();
        assertThat(picture.getElementsByTagName("desc").item(0).getTextContent())
                .contains("<b>&amp;</b>");
    }

    private Document picture(String setup) throws Exception {
        HttpRequest asked = client.request(PATH, "Accept", "image/svg+xml", "Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body(setup)))
                .build();
        String svg = HttpClient.newHttpClient()
                .send(asked, HttpResponse.BodyHandlers.ofString())
                .body();
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static String body(String setup) {
        return "{\"setup\":" + setup + "}";
    }
}
