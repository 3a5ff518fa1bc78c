package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;

/** A copy has everything of the setup in force and nothing of the log. */
class CopyTest extends OneJoint {

    @BeforeEach
    void itsPulledPinsAndATest() {
        var batch = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}");
        pull(batch.header("Location"), "190.5");
        pull(batch.header("Location"), "201.5");
        String pulled = Samples.SETUP.replace("\"count\":3", "\"count\":3,\"batch\":\"" + batch.id() + "\"");
        assertThat(client.put(joint + "/setup", pulled, "If-Match", "*").status())
                .isEqualTo(200);
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        pull(batch.header("Location"), "195"); // what the setup keeps is no longer what the stock says
        assertThat(client.post(airframe + "/load-outs", Samples.loadOut(joint.replaceAll(".*/", "")))
                        .status())
                .isEqualTo(201);
    }

    @Test
    void aJointIsCopiedToItsOwnAirframe() {
        String copy = followed(press(page(joint) + "/copy", "nose to bay, spare", airframe))
                .replaceAll("^/joints/|/plan.*", "");
        JsonNode made = client.get("/api/joints/" + copy).body();
        JsonNode from = client.get(joint).body();
        assertThat(made.path("name").asString()).isEqualTo("nose to bay, spare");
        assertThat(made.path("event")).isEqualTo(from.path("event"));
        for (String carried : new String[] {"cavity", "contents", "ceiling", "fitForce", "shoulder", "measure"}) {
            assertThat(made.path("setup").path(carried))
                    .as(carried)
                    .isEqualTo(from.path("setup").path(carried));
        }
        assertThat(made.at("/setup/pins/0/batch")).isEqualTo(from.at("/setup/pins/0/batch"));
        assertThat(made.path("setupRevision").asInt()).isEqualTo(1);
        assertThat(client.get("/api/joints/" + copy + "/ground-tests").body().path("items"))
                .isEmpty();
    }

    @Test
    void anAirframeIsCopiedWithItsJointsAndLoadOuts() {
        String copy = "/api" + followed(press(page(airframe) + "/copy", "Bittern II", null));
        assertThat(client.get(copy).body().path("name").asString()).isEqualTo("Bittern II");
        JsonNode joints = client.get(copy + "/joints").body().path("items");
        assertThat(joints).hasSize(1);
        assertThat(client.get(copy + "/load-outs")
                        .body()
                        .at("/items/0/loadOut/compartments/0/jointId")
                        .asString())
                .isEqualTo(joints.path(0).path("id").asString());
        String test = "/api/joints/" + joints.path(0).path("id").asString() + "/ground-tests";
        assertThat(client.get(test).body().path("items")).isEmpty();
    }

    @Test
    void aLoadOutIsCopied() {
        String id = client.get(airframe + "/load-outs").body().at("/items/0/id").asString();
        String list = followed(press(page(airframe) + "/load-outs/" + id + "/copy", "short case", null));
        assertThat(list).isEqualTo(page(airframe) + "/load-outs");
        assertThat(client.get(airframe + "/load-outs").body().path("items")).hasSize(2);
    }

    @Test
    void aFaultKeepsWhatWasTypedAndStoresNothing() {
        String before = client.get("/api/export").raw().body();
        var blank = press(page(joint) + "/copy", " ", airframe);
        assertThat(blank.statusCode()).isEqualTo(400);
        assertThat(blank.body()).contains("a name is needed");
        var longer = press(page(airframe) + "/copy", "x".repeat(81), null);
        assertThat(longer.statusCode()).isEqualTo(400);
        assertThat(longer.body()).contains("x".repeat(81), "1 to 80 characters");
        var nowhere = press(page(joint) + "/copy", "spare", "/01890000-0000-7000-8000-000000000000");
        assertThat(nowhere.statusCode()).isEqualTo(404);
        assertThat(client.get("/api/export").raw().body()).isEqualTo(before);
    }

    private void pull(String batch, String newtons) {
        client.post(batch + "/pull-tests", "{\"force\":{\"value\":" + newtons + ",\"unit\":\"N\"}}");
    }

    private static String followed(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        return answer.headers().firstValue("Location").orElse("").replaceFirst("^https?://[^/]*", "");
    }

    private HttpResponse<String> press(String path, String name, String to) {
        String fields = "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8)
                + (to == null ? "" : "&airframe=" + to.replaceAll(".*/", ""));
        return submitted(path, fields);
    }
}
