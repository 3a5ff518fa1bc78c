package org.sunder.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** Bad input: a 4xx problem that names the field and what is allowed; nothing is stored. */
@ServiceTest
@ExtendWith(OutputCaptureExtension.class)
class BadInputTest {

    @Autowired
    Client client;

    @Autowired
    JdbcClient jdbc;

    String airframe = "";
    String joint = "";

    @BeforeEach
    void prepare() {
        airframe = client.airframe();
        joint = client.joint(airframe);
    }

    static Stream<Arguments> badSetups() {
        return Stream.of(
                Arguments.of(
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"mm\"}",
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"furlong\"}",
                        400,
                        "/setup/innerDiameter/unit",
                        "mm, cm, m, in, ft"),
                Arguments.of(
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"mm\"}",
                        "\"innerDiameter\":{\"value\":-92,\"unit\":\"mm\"}",
                        422,
                        "/setup/innerDiameter",
                        "10"),
                Arguments.of(
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"mm\"}",
                        "\"innerDiameter\":{\"value\":1e30,\"unit\":\"mm\"}",
                        400,
                        "/setup/innerDiameter/value",
                        "20 digits"),
                Arguments.of(
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"mm\"}",
                        "\"innerDiameter\":{\"value\":\"92\",\"unit\":\"mm\"}",
                        400,
                        "/setup/innerDiameter/value",
                        "number"),
                Arguments.of(
                        "\"innerDiameter\":{\"value\":92,\"unit\":\"mm\"}",
                        "\"innerDiameter\":92",
                        400,
                        "/setup/innerDiameter",
                        "mm"),
                Arguments.of(
                        "\"depth\":{\"value\":45,\"unit\":\"mm\"}",
                        "\"depth\":{\"value\":900,\"unit\":\"mm\"}",
                        422,
                        "/setup/contents/0/depth",
                        "580"),
                Arguments.of(
                        "\"depth\":{\"value\":45,\"unit\":\"mm\"}",
                        "\"depth\":{\"value\":150,\"unit\":\"mm\"}",
                        422,
                        "/setup/contents/0/depth",
                        "at most 61 mm deep"),
                Arguments.of(
                        "\"mass\":{\"value\":340,\"unit\":\"g\"}",
                        "\"mass\":{\"value\":9,\"unit\":\"kg\"}",
                        422,
                        "/setup/contents/1",
                        ""),
                Arguments.of("\"thread\":\"M2.5\"", "\"thread\":\"M99\"", 422, "/setup/pins/0/thread", "#2-56"),
                Arguments.of(
                        "\"pins\":[{\"thread\":\"M2.5\",\"count\":3}]", "\"pins\":[null]", 400, "/setup/pins/0", ""),
                Arguments.of("\"count\":3", "\"count\":0", 400, "/setup/pins/0/count", "1 to 48"),
                Arguments.of("\"count\":3", "\"count\":2.5", 400, "/setup/pins/0/count", "whole number"),
                Arguments.of(
                        "\"count\":3",
                        "\"count\":10000000000000000000",
                        400,
                        "/setup/pins/0/count",
                        "at most 9 digits"),
                Arguments.of("\"count\":3", "\"count\":2000000000", 400, "/setup/pins/0/count", "at most 9 digits"),
                Arguments.of("\"count\":3", "\"count\":\"three\"", 400, "/setup/pins/0/count", "whole number"),
                Arguments.of("\"kind\":\"nose\"", "\"kind\":\"nozzle\"", 400, "/setup/cavity/0/kind", "cylinder, nose"),
                Arguments.of("\"kind\":\"nose\"", "\"kind\":\"cylinder\"", 422, "/setup/cavity/0/innerDiameter", ""),
                Arguments.of("\"event\":\"main\"", "\"event\":\"mian\"", 400, "/event", "drogue, main, other"),
                Arguments.of("\"event\":\"main\"", "\"evnet\":\"main\"", 400, "/evnet", "event, name, setup"),
                Arguments.of(
                        "\"gaugePressure\":{\"value\":300,\"unit\":\"kPa\"}",
                        "\"gaugePressure\":{\"value\":0,\"unit\":\"kPa\"}",
                        422,
                        "/setup/ceiling/gaugePressure",
                        ""));
    }

    @ParameterizedTest
    @MethodSource("badSetups")
    void aBadSetupIsRefusedByName(String good, String bad, int status, String pointer, String allowed) {
        assertThat(Samples.JOINT).contains(good);
        int before = count("joint");
        var answer = client.post(airframe + "/joints", Samples.JOINT.replace(good, bad));
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(status);
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.fault(pointer).path("detail").asString(""))
                .as(answer.raw().body())
                .isNotEmpty();
        assertThat(answer.fault(pointer).path("allowed").asString("")).contains(allowed);
        assertThat(count("joint")).isEqualTo(before);
        assertThat(client.get(answer.body().path("type").asString()).status()).isEqualTo(200);
    }

    @Test
    void everyFaultIsNamedAtOnce() {
        String bad = Samples.JOINT
                .replace("\"count\":3", "\"count\":\"three\"")
                .replace("\"name\":\"nose to bay\"", "\"name\":\" \"")
                .replace("\"unit\":\"N\"", "\"unit\":\"kN\"")
                .replace("\"event\":\"main\"", "\"event\":\"main\",\"colour\":\"red\"");
        var answer = client.post(airframe + "/joints", bad);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()
                        .path("errors")
                        .valueStream()
                        .map(e -> e.path("pointer").asString()))
                .containsExactlyInAnyOrder("/colour", "/name", "/setup/pins/0/count", "/setup/fitForce/unit");
    }

    @Test
    void aMisspeltOutcomeIsRefused() {
        var answer = client.post(joint + "/ground-tests", Samples.test("0.5", "seperated"));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.fault("/outcome").path("allowed").asString()).isEqualTo("none, partial, separated");
        assertThat(tests()).isZero();
    }

    @Test
    void aChargeBeyondTheModelIsRefused() {
        var answer = client.post(joint + "/ground-tests", Samples.test("50.1", "separated"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body().path("cautions")).as("a charge is named").isNotEmpty();
        assertThat(answer.fault("/charge").path("allowed").asString()).contains("50 g");
        assertThat(tests()).isZero();
    }

    @Test
    void whatWasFiredAboveALimitIsRecordedAndMarked() {
        var above = client.post(joint + "/ground-tests", Samples.test("2.10", "separated"));
        assertThat(above.status()).as(above.raw().body()).isEqualTo(201);
        assertThat(above.body().at("/test/beyond").toString()).isEqualTo("[\"ceiling\"]");
        assertThat(above.body().at("/next/basis/tests").asInt()).isEqualTo(1);
        assertThat(above.body().at("/next/charge/value").asDouble()).isLessThanOrEqualTo(2.082);
        var further = client.post(joint + "/ground-tests", Samples.test("2.70", "separated"));
        assertThat(further.body().at("/test/beyond").toString()).isEqualTo("[\"ceiling\",\"step\"]");
        var within = client.post(joint + "/ground-tests", Samples.test("1.00", "none"));
        assertThat(within.body().at("/test/beyond").toString()).isEqualTo("[]");
    }

    @Test
    void aTestInTheFutureIsRefused() {
        var answer = client.post(joint + "/ground-tests", Samples.test("0.5", "none", "2099-01-01T00:00:00Z"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.fault("/firedAt").path("detail").asString()).contains("future");
        assertThat(tests()).isZero();
    }

    @Test
    void aTimeWithoutOffsetIsRefused() {
        var answer = client.post(joint + "/ground-tests", Samples.test("0.5", "none", "2026-05-03T10:20:00"));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.fault("/firedAt").path("allowed").asString()).contains("offset");
    }

    @Test
    void aNegativeOrZeroChargeIsRefused() {
        for (String charge : new String[] {"0", "-0.5"}) {
            var answer = client.post(joint + "/ground-tests", Samples.test(charge, "none"));
            assertThat(answer.status()).isEqualTo(422);
            assertThat(answer.fault("/charge").path("allowed").asString()).isNotEmpty();
        }
        assertThat(tests()).isZero();
    }

    @Test
    void anUnknownJointIsNotFound() {
        String path = "/api/joints/01890000-0000-7000-8000-000000000000";
        assertThat(client.get(path + "/next-charge").status()).isEqualTo(404);
        assertThat(client.post(path + "/ground-tests", Samples.test("0.5", "none"))
                        .status())
                .isEqualTo(404);
        var odd = client.get("/api/joints/nonsense");
        assertThat(odd.status()).isEqualTo(400);
        assertThat(odd.fault("id").path("allowed").asString()).isEqualTo("a UUID");
    }

    @Test
    void brokenJsonIsRefused() {
        for (String body :
                new String[] {"{\"name\":", "", "[]", "null", "{\"name\":\"a\"}{}", "{\"name\":\"a\",\"name\":\"b\"}"
                }) {
            var answer = client.post("/api/airframes", body);
            assertThat(answer.status()).as(body).isEqualTo(400);
            assertThat(answer.raw().body())
                    .doesNotContain("Exception")
                    .doesNotContain("org.")
                    .doesNotContain("tools.");
        }
    }

    @Test
    void otherMediaTypesAndMethodsAreRefused() {
        var form = client.send(client.request("/api/airframes")
                .header("Content-Type", "text/csv")
                .POST(HttpRequest.BodyPublishers.ofString("a,b")));
        assertThat(form.status()).isEqualTo(415);
        var picky = client.get("/api/airframes", "Accept", "image/png");
        assertThat(picky.status()).isEqualTo(406);
        var patch = client.send(
                client.request("/api/airframes").method("PATCH", HttpRequest.BodyPublishers.ofString("{}")));
        assertThat(patch.status()).isEqualTo(405);
        assertThat(patch.header("Allow")).contains("POST").contains("GET");
        assertThat(client.get("/nothing/here").status()).isEqualTo(404);
        for (var answer : new Client.Answer[] {form, patch}) {
            assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        }
    }

    @Test
    void anOversizedBodyIsRefusedWithAndWithoutItsLength() {
        String large = "{\"name\":\"a\",\"notes\":\"" + "x".repeat(300_000) + "\"}";
        assertThat(client.post("/api/airframes", large).status()).isEqualTo(413);
        var streamed = client.send(client.request("/api/airframes")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() ->
                        new java.io.ByteArrayInputStream(large.getBytes(java.nio.charset.StandardCharsets.UTF_8)))));
        assertThat(streamed.status()).isEqualTo(413);
    }

    @Test
    void aNumberOfTwentyDigitsInPlaceOfAWordIsNamed() {
        String bad = Samples.AIRFRAME.replace("\"metric\"", "12345678901234567890");
        var answer = client.post("/api/airframes", bad);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body().path("type").asString()).isEqualTo("/problems/invalid-input");
        assertThat(answer.fault("/units").path("detail").asString("")).isNotEmpty();
    }

    @Test
    void whatADatabaseCannotKeepIsRefused() {
        for (String text : new String[] {"nul \\u0000", "half \\ud83d"}) {
            var answer = client.post("/api/airframes", "{\"name\":\"" + text + "\"}");
            assertThat(answer.status()).isEqualTo(400);
            assertThat(answer.fault("/name").path("allowed").asString()).contains("U+0000");
        }
    }

    @Test
    void aCallerWhoHangsUpIsNoErrorOfOurs(CapturedOutput output) throws Exception {
        int port = client.request("/").build().uri().getPort();
        for (int i = 0; i < 5; i++) {
            try (var socket = new java.net.Socket(java.net.InetAddress.getLoopbackAddress(), port)) {
                String head = "POST /api/airframes HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                        + "Content-Length: 1000\r\n\r\n{\"name\":";
                socket.getOutputStream().write(head.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            }
        }
        assertThat(client.get("/api/airframes?limit=1").status()).isEqualTo(200);
        Thread.sleep(300); // what would be logged is logged by then
        assertThat(output.getAll()).doesNotContain("ERROR");
    }

    @Test
    void anUnknownQueryParameterIsNamed() {
        var answer = client.get("/api/airframes?limt=5");
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.fault("limt").path("allowed").asString()).contains("limit");
        assertThat(client.get("/api/airframes?limit=0").status()).isEqualTo(400);
        assertThat(client.get("/api/airframes?limit=x").status()).isEqualTo(400);
        assertThat(client.get("/api/airframes?cursor=rubbish").status()).isEqualTo(400);
        assertThat(client.get("/api/airframes?limit=100000").status()).isEqualTo(200);
    }

    private int tests() {
        return client.get(joint + "/ground-tests").body().path("items").size();
    }

    private int count(String table) {
        return jdbc.sql("select count(*) from " + table).query(Integer.class).single();
    }
}
