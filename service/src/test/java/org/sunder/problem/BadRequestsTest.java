package org.sunder.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.Thorough;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Bad requests made from the specification, for every operation: a problem document each, never a failure of ours. */
@KeyedServiceTest
@ExtendWith(OutputCaptureExtension.class)
class BadRequestsTest {

    private static final String EXAMPLE_JOINT = "01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e";
    private static final int MOST_PER_OPERATION = Thorough.count(8, 30, 200);
    private static final JsonMapper JSON = new JsonMapper();
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "-1",
            "0",
            "1e308",
            "-1e-300",
            "12345678901234567890",
            "99999999999999999999999999999999",
            "\"\"",
            "\"nul \\u0000 here\"",
            "\"half \\ud83d a pair\"",
            "\"😀 \\u202e <script>alert(1)</script> ' or 1=1 --\"",
            "\"" + "x".repeat(5000) + "\"",
            "\"-999999999-01-01T00:00:00Z\"",
            "\"+999999999-12-31T23:59:59-18:00\"",
            "[]",
            "[[[[]]]]",
            "{}",
            "{\"value\":1,\"unit\":\"mm\"}",
            "{\"value\":-1e300,\"unit\":\"g\"}");

    private final Random draw = new Random(20261127);

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    Client one;
    String joint = "";
    JsonNode spec;

    @BeforeEach
    void prepare() {
        one = client.with(
                keys.issue(flyers.enter("fuzz").id(), "fuzz", Scope.ADMIN, null).secret());
        String airframe = one.airframe();
        joint = one.post(airframe + "/joints", Samples.JOINT).id().toString();
        spec = client.get("/v3/api-docs").body();
    }

    private record Operation(String method, String path, JsonNode described) {

        JsonNode example() {
            return described.at("/requestBody/content/application~1json/example");
        }
    }

    @Test
    void noBadBodyIsAFailureOfOurs() {
        Random random = new Random(20260503);
        for (Operation operation : operations()) {
            JsonNode example = operation.example();
            if (example.isObject()) {
                List<String> bodies = new ArrayList<>(bodies(example));
                java.util.Collections.shuffle(bodies, random);
                bodies.stream().limit(MOST_PER_OPERATION).forEach(body -> send(operation, body, "application/json"));
                some(broken(example)).forEach(body -> send(operation, body, "application/json"));
                send(operation, example.toString(), "text/plain");
                send(operation, example.toString(), "application/xml");
                send(operation, example.toString(), "nonsense");
            }
        }
    }

    @Test
    void noBadParameterIsAFailureOfOurs() {
        List<String> values = List.of(
                "",
                "-1",
                "0",
                "1e9",
                "99999999999999999999",
                "x",
                "%00",
                "%F0%9F%98%80",
                "%22",
                "%3Cscript%3E",
                "NaN",
                "1%20mm",
                "-1%20km",
                "999999999%20m",
                "a".repeat(3000));
        for (Operation operation : operations()) {
            for (JsonNode parameter : operation.described().path("parameters")) {
                for (String value : some(values)) {
                    String name = parameter.path("name").asString();
                    if (parameter.path("in").asString().equals("query")) {
                        send(operation, operation.path() + "?" + name + "=" + value, null, null);
                    } else if (parameter.path("in").asString().equals("path") && !value.isEmpty()) {
                        send(operation, operation.path().replace("{" + name + "}", value), null, null);
                    }
                }
            }
            send(operation, operation.path() + "?undocumented=1", null, null);
        }
    }

    @Test
    void noOddTypeEncodingOrQueryIsAFailureOfOursAndNoneWritesAStackTrace(CapturedOutput log) {
        List<String> types = List.of(
                "multipart/form-data",
                "multipart/form-data; boundary=",
                "multipart/mixed; boundary=x",
                "application/x-www-form-urlencoded",
                "application/json; charset=utf-16",
                "application/json; charset=nonsense",
                "application/octet-stream",
                "*/*",
                "json");
        List<String> queries = List.of(
                "units=%ED%A0%BD%ED%BA%80",
                "units=%FF",
                "%C3%28=1",
                "units=%C0%AF",
                "a=1&&b",
                "=",
                "&",
                "units",
                "%00=1",
                "units%00=si",
                "%ED%A0%BD=1",
                "a%0D%0Ab=1");
        for (Operation operation : operations()) {
            String body = operation.example().isObject() ? operation.example().toString() : "";
            some(types).forEach(type -> send(operation, body, type));
            some(queries).forEach(query -> send(operation, operation.path() + "?" + query, null, null));
        }
        for (String of : List.of("next-charge", "ladder", "estimate", "curve", "flight-charge", "ground-tests")) {
            assertThat(one.get("/api/joints/" + EXAMPLE_JOINT + "/" + of).status())
                    .isEqualTo(404);
        }
        assertThat(one.get("/api/field-kit?joint=" + EXAMPLE_JOINT).status()).isEqualTo(404);
        assertThat(log.toString()).doesNotContain("\tat ");
    }

    @Test
    void aQueryThatIsNoTextIsNamedByItsParameter() {
        for (String query : List.of("units=%ED%A0%BD%ED%BA%80", "x=1&units=%FF")) {
            var refused = one.get("/api/joints/" + joint + "/next-charge?" + query);
            assertThat(refused.status()).isEqualTo(400);
            assertThat(refused.fault("units").path("allowed").asString()).contains("UTF-8");
        }
    }

    @Test
    void noBodyMaySayWhatTheServiceDecides() {
        for (Operation operation : operations()) {
            JsonNode example = operation.example();
            for (String field : List.of("id", "flyerId", "version", "createdAt", "receivedAt", "archivedAt")) {
                boolean itsOwn = example.has(field); // such as the version of a document
                if (example.isObject() && !itsOwn) {
                    String body =
                            "{\"" + field + "\":\"x\"," + example.toString().substring(1);
                    var refused = one.send(one.request(at(operation.path()) + needed(operation), "If-Match", "*")
                            .header("Content-Type", "application/json")
                            .method(
                                    operation.method().toUpperCase(Locale.ROOT),
                                    HttpRequest.BodyPublishers.ofString(body)));
                    assertThat(refused.status())
                            .as(operation + " " + refused.raw().body())
                            .isEqualTo(400);
                    assertThat(refused.fault("/" + field).path("detail").asString())
                            .as(operation + " " + refused.raw().body())
                            .contains("unknown field");
                }
            }
        }
    }

    /** The parameters without which nothing is looked at, as a query. */
    private static String needed(Operation operation) {
        List<String> all = new ArrayList<>();
        for (JsonNode each : operation.described().path("parameters")) {
            if (each.path("in").asString().equals("query")
                    && each.path("required").asBoolean()) {
                all.add(each.path("name").asString() + "=x");
            }
        }
        return all.isEmpty() ? "" : "?" + String.join("&", all);
    }

    @Test
    void everyKindOfProblemHasAPage() {
        for (ProblemType type : ProblemType.values()) {
            var page = client.get(type.uri());
            assertThat(page.status()).as(type.uri()).isEqualTo(200);
            assertThat(page.header("Content-Type")).startsWith("text/html");
            assertThat(page.raw().body()).contains("<h1>" + type.title() + "</h1>");
        }
        assertThat(client.get("/problems/unheard-of").status()).isEqualTo(404);
    }

    @Test
    void noBodyButAnImportOrAPhotoMayBeLargerThanItsLimit() {
        String tooLarge = "{\"name\":\"" + "x".repeat(256 * 1024) + "\"}";
        for (Operation operation : operations()) {
            boolean bounded = operation.described().has("requestBody")
                    && !operation.path().equals("/api/import")
                    && !operation.path().endsWith("/photo");
            if (bounded) {
                var refused = one.send(one.request(at(operation.path()), "If-Match", "*")
                        .header("Content-Type", "application/json")
                        .method(
                                operation.method().toUpperCase(Locale.ROOT),
                                HttpRequest.BodyPublishers.ofString(tooLarge)));
                assertThat(refused.status()).as(operation.toString()).isEqualTo(413);
                assertThat(refused.body().path("type").asString()).isEqualTo("/problems/body-too-large");
            }
        }
    }

    /** All in a thorough run, else about a quarter, others for each operation. */
    private <T> List<T> some(List<T> all) {
        return all.stream()
                .filter(each -> Thorough.on() || draw.nextInt(4) == 0)
                .toList();
    }

    private void send(Operation operation, String body, String type) {
        send(operation, operation.path(), body, type);
    }

    private void send(Operation operation, String path, String body, String type) {
        String at = at(path);
        HttpRequest.Builder request = one.request(at, "If-Match", "*");
        if (type != null) {
            request.header("Content-Type", type);
        }
        var answer = one.send(request.method(
                operation.method().toUpperCase(Locale.ROOT),
                body == null ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body)));
        assertThat(answer.status())
                .as(operation.method() + " " + at + "\n" + body + "\n"
                        + answer.raw().body())
                .isLessThan(500);
        if (answer.status() >= 400) {
            assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
            assertThat(answer.raw().body())
                    .doesNotContain("Exception")
                    .doesNotContain("org.sunder")
                    .doesNotContain("jackson")
                    .doesNotContainIgnoringCase("insert into");
        }
    }

    private String at(String path) {
        return path.startsWith("/api/joints/")
                ? path.replace("{id}", joint)
                : path.replaceAll("\\{\\w+}", EXAMPLE_JOINT);
    }

    private List<Operation> operations() {
        List<Operation> all = new ArrayList<>();
        spec.path("paths")
                .forEachEntry((path, item) ->
                        item.forEachEntry((method, described) -> all.add(new Operation(method, path, described))));
        return all;
    }

    /** Each place of the example, once with each odd value, and once left out. */
    private List<String> bodies(JsonNode example) {
        List<String> all = new ArrayList<>();
        for (String pointer : pointers(example, "")) {
            for (String value : VALUES) {
                all.add(changed(example, pointer, value));
            }
            all.add(changed(example, pointer, ""));
        }
        return all;
    }

    private static List<String> broken(JsonNode example) {
        String text = example.toString();
        String first = example.propertyNames().iterator().next();
        return List.of(
                "",
                "null",
                "[]",
                "\"text\"",
                text.substring(0, text.length() / 2),
                text + text,
                "{\"" + first + "\":" + example.get(first) + "," + text.substring(1),
                "[".repeat(2000),
                "{\"a\":".repeat(2000),
                IntStream.range(0, 3000).mapToObj(i -> "\"f" + i + "\":0").collect(Collectors.joining(",", "{", "}")),
                "{\"" + first + "\":\"" + "x".repeat(270_000) + "\"}");
    }

    private static List<String> pointers(JsonNode node, String at) {
        List<String> all = new ArrayList<>();
        if (node.isObject()) {
            node.forEachEntry((name, child) -> all.addAll(pointers(child, at + "/" + name)));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                all.addAll(pointers(node.get(i), at + "/" + i));
            }
        }
        if (!at.isEmpty()) {
            all.add(at);
        }
        return all;
    }

    private static String changed(JsonNode example, String pointer, String value) {
        JsonNode copy = JSON.readTree(example.toString());
        int last = pointer.lastIndexOf('/');
        JsonNode parent = last == 0 ? copy : copy.at(pointer.substring(0, last));
        String name = pointer.substring(last + 1);
        // Written by way of a mark, so that what no tree can hold gets into the text.
        if (parent instanceof ObjectNode object) {
            if (value.isEmpty()) {
                object.remove(name);
            } else {
                object.put(name, "@@mark@@");
            }
        } else if (parent instanceof ArrayNode array) {
            if (value.isEmpty()) {
                array.remove(Integer.parseInt(name));
            } else {
                array.set(Integer.parseInt(name), JSON.readTree("\"@@mark@@\""));
            }
        }
        return copy.toString().replace("\"@@mark@@\"", value);
    }
}
