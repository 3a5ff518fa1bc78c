package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/**
 * A measure too coarse for the charges of its joint. By hand: two M2 pins of 123.4 N and a fit of 15 N over 22.90 cm² are
 * 114.3 kPa, in 54 mm by 126 mm, 0.2886 L; over 219 kJ/kg 0.151 g.
 */
@ServiceTest
class CoarseMeasureApiTest {

    private static final String SETUP = """
            {"innerDiameter":{"value":54,"unit":"mm"},
             "cavity":[{"kind":"cylinder","innerDiameter":{"value":54,"unit":"mm"},"length":{"value":126,"unit":"mm"}}],
             "pins":[{"thread":"M2","count":2}],"fitForce":{"value":15,"unit":"N"}}""";

    private static final String TEXT =
            "A 0.15 g charge cannot be planned with 0.05 g steps; a scale that reads 0.01 g does.";

    @Autowired
    Client client;

    private Client.Answer created;
    private String joint = "";

    @BeforeEach
    void describe() {
        String airframe = client.airframe();
        created =
                client.post(airframe + "/joints", "{\"name\":\"small\",\"event\":\"drogue\",\"setup\":" + SETUP + "}");
        joint = created.header("Location");
    }

    private static void says(JsonNode warnings) {
        assertThat(warnings.valueStream())
                .anySatisfy(
                        warning -> assertThat(warning.path("text").asString()).isEqualTo(TEXT));
    }

    @Test
    void isWarnedOfAtEntry() {
        says(created.body().path("warnings"));
        says(client.get(joint).body().path("warnings"));
        says(client.put(joint + "/setup", SETUP, "If-Match", created.header("ETag"))
                .body()
                .path("warnings"));
        says(client.post("/api/checks/setup", "{\"setup\":" + SETUP + "}")
                .body()
                .path("warnings"));
    }

    @Test
    void isWarnedOfBesideEveryCharge() throws IOException, InterruptedException {
        says(client.get(joint + "/estimate").body().path("warnings"));
        says(client.get(joint + "/next-charge").body().path("warnings"));
        says(client.get(joint + "/ladder").body().path("warnings"));
        JsonNode inKit = client.get("/api/field-kit?joint=" + joint.substring(joint.lastIndexOf('/') + 1))
                .body()
                .at("/joints/0");
        says(inKit.path("flags"));
        says(inKit.at("/advice/warnings"));
        HttpResponse<String> card = HttpClient.newHttpClient()
                .send(
                        client.request(joint + "/ladder", "Accept", "text/html").build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(card.body()).contains(TEXT);
    }

    @Test
    void isNeverADeadEndWithoutAFinerOne() {
        JsonNode next = client.get(joint + "/next-charge").body();
        for (int i = 0; i < 4 && next.path("decision").asString().equals("fire"); i++) {
            String grams = next.path("charge").path("value").asString();
            next = client.post(joint + "/ground-tests", Samples.test(grams, "none"))
                    .body()
                    .path("next");
        }
        assertThat(next.path("reason").path("code").asString()).isEqualTo("finer-measure");
        assertThat(next.path("reason").path("text").asString())
                .isEqualTo(
                        "No charge in steps of 0.05 g is both allowed and of use; with steps of 0.01 g there is one.");
        JsonNode finer = next.path("options").path(0);
        assertThat(finer.path("kind").asString()).isEqualTo("finer-measure");
        assertThat(finer.path("measure").path("value").asString()).isEqualTo("0.01");
        String better = SETUP.replaceFirst("\\{", "{\"measure\":{\"value\":0.01,\"unit\":\"g\"},");
        assertThat(client.put(joint + "/setup", better, "If-Match", "*").status())
                .isEqualTo(200);
        JsonNode then = client.get(joint + "/next-charge").body();
        assertThat(then.path("decision").asString()).isEqualTo("fire");
        assertThat(then.path("warnings").valueStream().map(w -> w.path("code").asString()))
                .doesNotContain("coarse-measure");
    }
}
