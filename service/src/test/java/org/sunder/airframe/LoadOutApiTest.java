package org.sunder.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** Load-outs of an airframe, and whether they fit. */
@ServiceTest
class LoadOutApiTest {

    private static final String BOOSTER = """
            {"name":"bay to booster","event":"drogue","setup":{
             "innerDiameter":{"value":100,"unit":"mm"},
             "cavity":[{"kind":"cylinder","innerDiameter":{"value":100,"unit":"mm"},"length":{"value":500,"unit":"mm"}}],
             "contents":[{"name":"coupler","kind":"intrusion","depth":{"value":100,"unit":"mm"},"diameter":{"value":100,"unit":"mm"}},
                         {"name":"case","kind":"solid","diameter":{"value":54,"unit":"mm"},"length":{"value":80,"unit":"mm"}}],
             "pins":[{"thread":"M2.5","count":2}]}}""";

    @Autowired
    Client client;

    String airframe = "";
    String booster = "";
    String nose = "";

    @BeforeEach
    void prepare() {
        airframe = client.airframe();
        nose = client.post(airframe + "/joints", Samples.JOINT).id().toString();
        booster = client.post(airframe + "/joints", BOOSTER).id().toString();
    }

    @Test
    void aLoadOutComesBackChangesAndGoes() {
        var made = client.post(airframe + "/load-outs", loadOut("short", booster, "80.0"));
        assertThat(made.status()).as(made.raw().body()).isEqualTo(201);
        String path = made.header("Location");
        assertThat(client.get(path).raw().body()).contains("{\"value\":80.0,\"unit\":\"mm\"}");
        String other = loadOut("long", booster, "200");
        assertThat(client.put(path, other).status()).isEqualTo(428);
        assertThat(client.put(path, other, "If-Match", "\"v7\"").status()).isEqualTo(412);
        var changed = client.put(path, other, "If-Match", "\"v0\"");
        assertThat(changed.status()).isEqualTo(200);
        assertThat(changed.body().path("loadOut").path("name").asString()).isEqualTo("long");
        assertThat(client.get(airframe + "/load-outs").body().path("items")).hasSize(1);
        assertThat(client.delete(path, "If-Match", "\"v0\"").status()).isEqualTo(412);
        assertThat(client.delete(path, "If-Match", "\"v1\"").status()).isEqualTo(204);
        assertThat(client.get(path).status()).isEqualTo(404);
    }

    @Test
    void theFitOfEachJointComesWorstFirstWithWhatItChanges() {
        client.post(airframe + "/load-outs", loadOut("short", booster, "80"));
        client.post(airframe + "/load-outs", loadOut("too long", booster, "420"));
        client.post(airframe + "/load-outs", loadOut("long", booster, "200"));
        JsonNode fit = client.get(airframe + "/fit").body();
        assertThat(fit.path("cautions")).hasSizeGreaterThanOrEqualTo(8);
        assertThat(fit.path("joints").get(0).path("loadOuts")).isEmpty();
        JsonNode joint = fit.path("joints").get(1);
        JsonNode outs = joint.path("loadOuts");
        assertThat(outs.valueStream().map(out -> out.path("name").asString()))
                .containsExactly("too long", "long", "short");
        assertThat(outs.get(0).path("fit").path("fits").asBoolean()).isFalse();
        // 500 mm less 100 mm of coupler less the case.
        assertThat(value(outs.get(0).path("fit"), "lengthLeft")).isCloseTo(-20, offset(0.01));
        assertThat(value(outs.get(1).path("fit"), "lengthLeft")).isCloseTo(200, offset(0.01));
        // pi/4 * (5.4 cm)^2 = 22.902 cm2, times 12 cm more case: 274.8 mL less gas.
        assertThat(value(outs.get(1), "freeVolumeChange")).isCloseTo(-0.2748, offset(0.0001));
        assertThat(value(outs.get(2), "freeVolumeChange")).isCloseTo(0, offset(1e-6));
        double share = 0.2748 / value(joint, "freeVolume");
        assertThat(value(outs.get(1), "handbookChargeChange"))
                .isCloseTo(-share * value(joint, "handbookCharge"), offset(0.001));
    }

    @Test
    void aBadLoadOutIsRefusedByName() {
        String path = airframe + "/load-outs";
        var negative = client.post(path, loadOut("a", booster, "-80"));
        assertThat(negative.status()).isEqualTo(422);
        assertThat(negative.fault("/compartments/0/items/0/length")
                        .path("allowed")
                        .asString())
                .contains("1 mm");
        var unknown = client.post(path, loadOut("a", "01890000-0000-7000-8000-000000000000", "80"));
        assertThat(unknown.status()).isEqualTo(422);
        assertThat(unknown.fault("/compartments/0/jointId").path("detail").asString())
                .contains("no such joint");
        String one = loadOut("a", nose, "80");
        String item = one.substring(one.indexOf("[{\"jointId\"") + 1, one.lastIndexOf(']'));
        var twice = client.post(path, one.replace(item, item + "," + item));
        assertThat(twice.fault("/compartments/1/jointId").path("detail").asString())
                .contains("twice");
        assertThat(client.post(path, "{\"name\":\"a\",\"compartments\":[]}").status())
                .isEqualTo(400);
        var kind = client.post(path, one.replace("hard", "heavy"));
        assertThat(kind.fault("/compartments/0/items/0/kind").path("allowed").asString())
                .isEqualTo("soft, hard");
        assertThat(client.get(path).body().path("items")).isEmpty();
        assertThat(client.get("/api/airframes/01890000-0000-7000-8000-000000000000/fit")
                        .status())
                .isEqualTo(404);
    }

    private static String loadOut(String name, String joint, String millimetres) {
        return "{\"name\":\"" + name + "\",\"motorCase\":\"54 mm\",\"compartments\":[{\"jointId\":\"" + joint
                + "\",\"items\":[{\"name\":\"case\",\"kind\":\"hard\",\"length\":{\"value\":" + millimetres
                + ",\"unit\":\"mm\"},\"diameter\":{\"value\":54,\"unit\":\"mm\"},\"place\":\"far-end\"}]}]}";
    }

    private static double value(JsonNode node, String field) {
        return node.path(field).path("value").asDouble();
    }
}
