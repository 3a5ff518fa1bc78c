package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.photo.Pictures;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every example in the specification works: requests are sent to the live service, recorded answers are valid by the
 * schemas. {@code -Dexamples.write=true} records the answers anew.
 */
@ServiceTest
class ExamplesTest {

    private static final Path FOLDER = Path.of("src", "main", "resources", "openapi");

    private static final String SOME_JOINT = "01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e"; // as the examples name one

    private final JsonMapper json =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    @Autowired
    Client client;

    @Test
    void everyExampleWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        var airframe = client.post("/api/airframes", request("createAirframe"));
        String path = airframe.header("Location");
        check(guard, "createAirframe", airframe, 201);
        check(guard, "listAirframes", client.get("/api/airframes?limit=1"), 200);
        check(guard, "getAirframe", client.get(path), 200);
        check(guard, "replaceAirframe", client.put(path, request("replaceAirframe"), "If-Match", "\"v0\""), 200);
        var joint = client.post(path + "/joints", request("createJoint"));
        check(guard, "createJoint", joint, 201);
        String at = joint.header("Location");
        check(guard, "listJoints", client.get(path + "/joints"), 200);
        check(guard, "getJoint", client.get(at), 200);
        check(guard, "getEstimate", client.get(at + "/estimate"), 200);
        check(guard, "getNextCharge", client.get(at + "/next-charge"), 200);
        check(guard, "getLadder", client.get(at + "/ladder?depth=2"), 200);
        var logged = client.post(at + "/ground-tests", request("logGroundTest"));
        check(guard, "logGroundTest", logged, 201);
        String test = logged.header("Location");
        check(guard, "getGroundTest", client.get(test), 200);
        check(guard, "listGroundTests", client.get(at + "/ground-tests"), 200);
        var photo = client.send(client.request(test + "/photo")
                .header("Content-Type", "image/jpeg")
                .PUT(HttpRequest.BodyPublishers.ofByteArray(Pictures.jpeg(160, 120))));
        check(guard, "putPhoto", photo, 201);
        check(guard, "voidGroundTest", client.post(test + "/void", request("voidGroundTest")), 200);
        check(guard, "unvoidGroundTest", client.post(test + "/unvoid", request("unvoidGroundTest")), 200);
        testUntilDone(at);
        client.post(
                at + "/ground-tests",
                Samples.test("1.20", "separated", "2026-05-03T12:40:00+01:00")
                        .replaceFirst(
                                "\\{", "{\"speed\":{\"value\":11.4,\"unit\":\"m/s\"},\"speedUncertaintyPercent\":6,"));
        check(guard, "getLoads", client.get(at + "/loads?stretch=80%20mm"), 200);
        check(guard, "setFilming", client.put("/api/filming", request("setFilming")), 200);
        check(guard, "getFilming", client.get("/api/filming"), 200);
        client.put("/api/filming", "{\"filming\":false}"); // what is tried after this counts on no films
        check(guard, "getCurve", client.get(at + "/curve"), 200);
        check(guard, "getChargeRuler", client.get(at + "/ruler"), 200);
        check(guard, "getSideView", client.get(path + "/side-view"), 200);
        check(guard, "getFieldKit", client.get("/api/field-kit?depth=1&limit=1"), 200);
        check(guard, "getFleetCorrection", client.get("/api/fleet/correction"), 200);
        check(guard, "logFlightEvent", client.post(at + "/flight-events", request("logFlightEvent")), 201);
        check(guard, "listFlightEvents", client.get(at + "/flight-events"), 200);
        check(
                guard,
                "getFlightCharge",
                client.get(at + "/flight-charge?siteElevation=300%20m&eventAltitude=1200%20m"),
                200);
        check(guard, "getHistory", client.get(path + "/history"), 200);
        check(guard, "changeSetup", client.put(at + "/setup", request("changeSetup"), "If-Match", "\"v0\""), 200);
        check(guard, "listSetups", client.get(at + "/setups"), 200);
        client.delete(path, "If-Match", "*");
        check(guard, "bringBackAirframe", client.post(path + "/bring-back", ""), 200);
    }

    @Test
    void everyExampleOfTheStockWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        var powder = client.post("/api/powders", request("createPowder"));
        check(guard, "createPowder", powder, 201);
        String powderPath = powder.header("Location");
        check(guard, "listPowders", client.get("/api/powders"), 200);
        check(guard, "getPowder", client.get(powderPath), 200);
        check(guard, "replacePowder", client.put(powderPath, request("replacePowder"), "If-Match", "\"v0\""), 200);
        assertThat(client.delete(powderPath, "If-Match", "\"v1\"").status()).isEqualTo(204);
        var batch = client.post("/api/pin-batches", request("createPinBatch"));
        check(guard, "createPinBatch", batch, 201);
        String batchPath = batch.header("Location");
        client.post(batchPath + "/pull-tests", "{\"force\":{\"value\":199.0,\"unit\":\"N\"}}");
        check(guard, "addPullTest", client.post(batchPath + "/pull-tests", request("addPullTest")), 201);
        client.post(batchPath + "/pull-tests", "{\"force\":{\"value\":21.5,\"unit\":\"N\"}}");
        String third = batchPath + "/pull-tests/3";
        check(guard, "takeBackPullTest", client.post(third + "/take-back", ""), 200);
        check(guard, "leaveOutPullTest", client.post(third + "/leave-out", ""), 200);
        check(guard, "listPinBatches", client.get("/api/pin-batches?limit=1"), 200);
        check(guard, "getPinBatch", client.get(batchPath), 200);
        check(guard, "removePullTest", client.delete(third, "If-Match", "*"), 200);
        check(guard, "replacePinBatch", client.put(batchPath, request("replacePinBatch"), "If-Match", "\"v5\""), 200);
    }

    @Test
    void everyExampleOfTheChecksWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        String[][] checks = {
            {"checkVolume", "volume"},
            {"checkRetention", "retention"},
            {"checkPinsInFlight", "pins-in-flight"},
            {"checkVents", "vents"},
            {"checkFit", "fit"},
            {"checkInsertion", "insertion"},
            {"checkSpeed", "speed"},
            {"checkSetup", "setup"}
        };
        for (String[] each : checks) {
            check(guard, each[0], client.post("/api/checks/" + each[1], request(each[0])), 200);
        }
    }

    @Test
    void everyExampleOfTheLoadOutsWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        String path = client.post("/api/airframes", request("createAirframe")).header("Location");
        String joint = client.post(path + "/joints", boosterJoint()).id().toString();
        var made = client.post(path + "/load-outs", request("createLoadOut").replace(SOME_JOINT, joint));
        check(guard, "createLoadOut", made, 201);
        String at = made.header("Location");
        check(guard, "listLoadOuts", client.get(path + "/load-outs"), 200);
        check(guard, "getLoadOut", client.get(at), 200);
        String other = request("replaceLoadOut").replace(SOME_JOINT, joint);
        check(guard, "replaceLoadOut", client.put(at, other, "If-Match", "\"v0\""), 200);
        check(guard, "getFit", client.get(path + "/fit"), 200);
        assertThat(client.delete(at, "If-Match", "\"v1\"").status()).isEqualTo(204);
    }

    @Test
    void everyExampleOfAccessWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        var key = client.post("/api/access-keys", request("createAccessKey"));
        check(guard, "createAccessKey", key, 201);
        check(guard, "listAccessKeys", client.get("/api/access-keys"), 200);
        assertThat(client.delete(key.header("Location")).status()).isEqualTo(204);
        var flyer = client.post("/api/flyers", request("createFlyer"));
        check(guard, "createFlyer", flyer, 201);
        check(guard, "listFlyers", client.get("/api/flyers"), 200);
        String keys = flyer.header("Location") + "/access-keys";
        var theirs = client.post(keys, request("createFlyerKey"));
        check(guard, "createFlyerKey", theirs, 201);
        check(guard, "listFlyerKeys", client.get(keys), 200);
        assertThat(client.delete(theirs.header("Location")).status()).isEqualTo(204);
    }

    @Test
    void everyExampleOfTheExchangeWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        check(guard, "importEverything", client.post("/api/import", request("importEverything")), 200);
        check(guard, "exportEverything", client.get("/api/export"), 200);
    }

    @Test
    void everyExampleOfThePoolWorks() throws IOException {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        String file = request("takeInPoolSnapshot");
        String from = "?givenBy=the%20club%20down%20the%20road";
        var taken = client.post("/api/pool/snapshots" + from, file);
        check(guard, "takeInPoolSnapshot", taken, 201);
        check(guard, "moveToNewestPoolSnapshot", client.post("/api/pool/move", ""), 200);
        check(guard, "getPool", client.get("/api/pool"), 200);
        check(guard, "setSharing", client.put("/api/pool/sharing", request("setSharing")), 200);
        client.put("/api/pool/using", "{\"using\":false}");
        check(guard, "setUsing", client.put("/api/pool/using", request("setUsing")), 200);
        check(guard, "listPoolSnapshots", client.get("/api/pool/snapshots"), 200);
        check(guard, "getPoolSnapshot", client.get(taken.header("Location")), 200);
        client.put("/api/pool/sharing", "{\"sharing\":false}");
        client.put(
                "/api/pool/using", "{\"using\":false}"); // what is tried after this starts from the model's own priors
    }

    private static String boosterJoint() throws IOException {
        Path setup = Path.of("src", "main", "resources", "demo", "bittern-booster.json");
        return "{\"name\":\"bay to booster\",\"event\":\"drogue\",\"setup\":" + Files.readString(setup) + "}";
    }

    private void testUntilDone(String joint) {
        JsonNode next = client.get(joint + "/next-charge").body();
        for (int i = 0; next.path("decision").asString().equals("fire") && i < 10; i++) {
            String charge = next.path("charge").path("value").asString();
            String time = "2026-05-03T1" + i + ":50:00+01:00";
            next = client.post(joint + "/ground-tests", Samples.test(charge, "separated", time))
                    .body()
                    .path("next");
        }
    }

    private static String request(String operation) throws IOException {
        return Files.readString(FOLDER.resolve(operation + ".request.json"));
    }

    private void check(SpecGuard guard, String operation, Client.Answer answer, int status) throws IOException {
        assertThat(answer.status()).as(operation + ": " + answer.raw().body()).isEqualTo(status);
        Path recorded = FOLDER.resolve(operation + ".response.json");
        if (Boolean.getBoolean("examples.write")) {
            Files.writeString(recorded, json.writeValueAsString(answer.body()) + "\n");
        }
        var request = answer.raw().request();
        assertThat(guard.faults(
                        request.method(),
                        request.uri().getPath(),
                        status,
                        "application/json",
                        json.readTree(Files.readString(recorded))))
                .as("the recorded answer of " + operation)
                .isEmpty();
    }
}
