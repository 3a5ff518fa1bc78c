package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.photo.Pictures;

/** Every operation of the specification, asked without a key and with each kind of key. */
@KeyedServiceTest
class AccessMatrixTest {

    private static final Path EXAMPLES = Path.of("src", "main", "resources", "openapi");
    private static final String EXAMPLE_JOINT = "01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e";
    private static final String NOBODYS = "01890000-0000-7000-8000-000000000000";

    /** Who may ask for an operation: a scope, and those above it. */
    private enum Row {
        READ(Scope.READ_ONLY),
        LOG(Scope.LOG_ONLY),
        WRITE(Scope.FULL),
        LOOK_AFTER(Scope.ADMIN);

        private final Scope least;

        Row(Scope least) {
            this.least = least;
        }

        boolean allows(Scope scope) {
            return scope.compareTo(least) <= 0;
        }
    }

    private static final Map<String, Row> ROWS = rows();

    private static Map<String, Row> rows() {
        Map<String, Row> rows = new HashMap<>();
        put(
                rows,
                Row.READ,
                "listAirframes getAirframe getFit getHistory listJoints listLoadOuts getFleetCorrection getGroundTest"
                        + " getJoint getEstimate getFlightCharge listFlightEvents listGroundTests getLadder getNextCharge"
                        + " listSetups getFieldKit getLoadOut listPinBatches getPinBatch listPowders getPowder checkFit"
                        + " checkInsertion checkPinsInFlight checkRetention checkSetup checkSpeed checkVents checkVolume getCurve"
                        + " getChargeRuler getSideView"
                        + " getPhoto exportEverything getPool listPoolSnapshots getPoolSnapshot getFilming getLoads");
        put(rows, Row.LOG, "logGroundTest logFlightEvent putPhoto setFilming");
        put(
                rows,
                Row.WRITE,
                "createAirframe archiveAirframe bringBackAirframe removeAirframe removeJoint replaceAirframe createJoint createLoadOut unvoidGroundTest"
                        + " voidGroundTest removePhoto changeSetup removeLoadOut replaceLoadOut createPinBatch archivePinBatch"
                        + " replacePinBatch addPullTest leaveOutPullTest takeBackPullTest removePullTest createPowder archivePowder replacePowder listAccessKeys"
                        + " createAccessKey revokeAccessKey importEverything setSharing setUsing moveToNewestPoolSnapshot");
        put(
                rows,
                Row.LOOK_AFTER,
                "listFlyers createFlyer listFlyerKeys createFlyerKey revokeFlyerKey backUp renewPool"
                        + " takeInPoolSnapshot");
        return rows;
    }

    private static void put(Map<String, Row> rows, Row row, String operations) {
        for (String operation : operations.split(" ", -1)) {
            rows.put(operation, row);
        }
    }

    private record Operation(String id, String method, String path) {}

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    final Map<String, String> ids = new HashMap<>();
    Flyer owner;
    Client full;

    @BeforeEach
    void prepare() throws IOException {
        owner = flyers.enter("owner");
        full = client.with(keys.issue(owner.id(), "full", Scope.FULL, null).secret());
        String airframe = full.airframe();
        ids.put("/api/airframes/", airframe.replaceAll(".*/", ""));
        var joint = full.post(airframe + "/joints", Samples.JOINT);
        ids.put("/api/joints/", joint.id().toString());
        ids.put(
                "/api/ground-tests/",
                full.post(joint.header("Location") + "/ground-tests", Samples.test("0.85", "separated"))
                        .id()
                        .toString());
        full.send(full.request("/api/ground-tests/" + ids.get("/api/ground-tests/") + "/photo")
                .header("Content-Type", "image/png")
                .PUT(HttpRequest.BodyPublishers.ofByteArray(Pictures.png(8, 8))));
        String loadOut =
                example("createLoadOut").replace(EXAMPLE_JOINT, joint.id().toString());
        ids.put(
                "/api/load-outs/",
                full.post(airframe + "/load-outs", loadOut).id().toString());
        ids.put(
                "/api/powders/",
                full.post("/api/powders", example("createPowder")).id().toString());
        ids.put(
                "/api/pin-batches/",
                full.post("/api/pin-batches", example("createPinBatch")).id().toString());
        full.post("/api/pin-batches/" + ids.get("/api/pin-batches/") + "/pull-tests", example("addPullTest"));
        ids.put(
                "/api/access-keys/",
                keys.issue(owner.id(), "spare", Scope.READ_ONLY, null)
                        .key()
                        .id()
                        .toString());
        ids.put("/api/flyers/", owner.id().toString());
    }

    @Test
    void everyOperationHasARow() {
        assertThat(operations().stream().map(Operation::id))
                .allSatisfy(id -> assertThat(ROWS).containsKey(id));
    }

    @Test
    void withoutAKeyNothingIsAnswered() {
        for (Operation operation : operations()) {
            var answer = ask(client, operation, path(operation, false));
            assertThat(answer.status()).as(operation.toString()).isEqualTo(401);
            assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer");
        }
    }

    @Test
    void eachScopeReachesAsFarAsItsRowSays() {
        for (Scope scope : Scope.values()) {
            Client holder = client.with(
                    keys.issue(owner.id(), scope.toString(), scope, null).secret());
            for (Operation operation : operations()) {
                var answer = ask(holder, operation, path(operation, false));
                boolean allowed = ROWS.get(operation.id()).allows(scope);
                assertThat(answer.status() != 403)
                        .as(scope + " " + operation + ": " + answer.raw().body())
                        .isEqualTo(allowed);
                assertThat(answer.status())
                        .as(operation.toString())
                        .isNotEqualTo(401)
                        .isLessThan(500);
            }
        }
    }

    @Test
    void anotherFlyersThingsAreNotThere() {
        Flyer other = flyers.enter("another");
        Client stranger =
                client.with(keys.issue(other.id(), "full", Scope.FULL, null).secret());
        for (Operation operation : operations()) {
            boolean named = operation.path().contains("{")
                    && ROWS.get(operation.id()) != Row.LOOK_AFTER
                    && !operation.path().startsWith("/api/pool/"); // a snapshot is everyone's
            if (named) {
                var theirs = ask(stranger, operation, path(operation, false));
                var nobodys = ask(stranger, operation, path(operation, true));
                assertThat(theirs.status())
                        .as(operation + ": " + theirs.raw().body())
                        .isEqualTo(404);
                assertThat(nobodys.status()).as(operation.toString()).isEqualTo(404);
                assertThat(neutral(theirs)).isEqualTo(neutral(nobodys));
                assertThat(ask(full, operation, path(operation, false)).status())
                        .as("the owner at " + operation)
                        .isNotIn(401, 403, 404);
            }
        }
        assertThat(stranger.get("/api/airframes").body().path("items")).isEmpty();
        assertThat(stranger.get("/api/fleet/correction").raw().body()).doesNotContain("Bittern");
    }

    @Test
    void authorisationComesBeforeValidation() {
        Client guest = client.with(
                keys.issue(owner.id(), "guest", Scope.READ_ONLY, null).secret());
        assertThat(client.post("/api/airframes", "{").status()).isEqualTo(401);
        assertThat(guest.post("/api/airframes", "{").status()).isEqualTo(403);
        assertThat(client.post("/api/airframes", "x".repeat(300_000)).status()).isEqualTo(401);
    }

    private String neutral(Client.Answer answer) {
        String text = answer.raw().body().replaceAll("\"requestId\":\"[^\"]*\"", "");
        for (String id : ids.values()) {
            text = text.replace(id, NOBODYS);
        }
        return text;
    }

    private List<Operation> operations() {
        List<Operation> all = new ArrayList<>();
        client.get("/v3/api-docs")
                .body()
                .path("paths")
                .forEachEntry((path, item) -> item.forEachEntry((method, operation) ->
                        all.add(new Operation(operation.path("operationId").asString(), method, path))));
        // What puts things away comes last.
        return all.stream()
                .collect(Collectors.partitioningBy(
                        operation -> operation.method().equals("delete")))
                .values()
                .stream()
                .flatMap(List::stream)
                .toList();
    }

    private String path(Operation operation, boolean nobodys) {
        String path = operation.path();
        String kind = path.replaceAll("\\{.*", "");
        String id = nobodys ? NOBODYS : ids.getOrDefault(kind, NOBODYS);
        return path.replace("{id}", id)
                .replace("{number}", "1")
                .replace("{key}", nobodys ? NOBODYS : ids.get("/api/access-keys/"));
    }

    private static Client.Answer ask(Client asker, Operation operation, String path) {
        HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.noBody();
        HttpRequest.Builder request = asker.request(path);
        try {
            if (Files.exists(EXAMPLES.resolve(operation.id() + ".request.json"))) {
                request.header("Content-Type", "application/json");
                body = HttpRequest.BodyPublishers.ofString(example(operation.id()));
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        boolean changes = operation.method().equals("put") || operation.method().equals("delete");
        if (changes) {
            request.header("If-Match", "*");
        }
        return asker.send(request.method(operation.method().toUpperCase(Locale.ROOT), body));
    }

    private static String example(String operation) throws IOException {
        return Files.readString(EXAMPLES.resolve(operation + ".request.json"));
    }
}
