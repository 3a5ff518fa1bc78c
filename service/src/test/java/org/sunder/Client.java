package org.sunder;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.core.env.Environment;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Speaks to the service under test as any client would. */
@TestComponent
public class Client {

    /** No answer takes as long on the slowest machine: who waits longer waits for ever. */
    private static final Duration LONGEST = Duration.ofMinutes(5);

    private final HttpClient http = HttpClient.newHttpClient();
    private final JsonMapper json = new JsonMapper();
    private final Environment environment;
    private final Optional<String> key;
    private final AtomicReference<SpecGuard> guard;

    @Autowired
    public Client(Environment environment) {
        this(environment, Optional.empty(), new AtomicReference<>());
    }

    private Client(Environment environment, Optional<String> key, AtomicReference<SpecGuard> guard) {
        this.guard = guard;
        this.environment = environment;
        this.key = key;
    }

    /** The same client, showing a key. */
    public Client with(String accessKey) {
        return new Client(environment, Optional.of(accessKey), guard);
    }

    /** An answer with its body as JSON. */
    public record Answer(int status, HttpResponse<String> raw, JsonNode body) {

        public String header(String name) {
            return raw.headers().firstValue(name).orElse("");
        }

        public UUID id() {
            return UUID.fromString(header("Location").replaceAll(".*/", ""));
        }

        /** The fault at a pointer, or a missing node. */
        public JsonNode fault(String pointer) {
            for (JsonNode fault : body.path("errors")) {
                if (fault.path("pointer").asString().equals(pointer)) {
                    return fault;
                }
            }
            return body.path("no such fault");
        }
    }

    public Answer get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    public Answer post(String path, String body, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    public Answer put(String path, String body, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/json")
                .PUT(HttpRequest.BodyPublishers.ofString(body)));
    }

    public Answer delete(String path, String... headers) {
        return send(request(path, headers).DELETE());
    }

    /** Enters the airframe of the samples. @return its address */
    public String airframe() {
        return entered("/api/airframes", Samples.AIRFRAME);
    }

    /** Describes the joint of the samples at an airframe. @return its address */
    public String joint(String airframe) {
        return entered(airframe + "/joints", Samples.JOINT);
    }

    /** The joint of the samples at an airframe of its own. @return its address */
    public String joint() {
        return joint(airframe());
    }

    private String entered(String path, String body) {
        Answer answer = post(path, body);
        if (answer.status() != 201) {
            throw new AssertionError(
                    "not entered: " + answer.status() + " " + answer.raw().body());
        }
        return answer.header("Location");
    }

    public HttpRequest.Builder request(String path, String... headers) {
        String port = environment.getRequiredProperty("local.server.port");
        HttpRequest.Builder builder = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(LONGEST);
        key.ifPresent(shown -> builder.header("Authorization", "Bearer " + shown));
        if (headers.length > 0) {
            builder.headers(headers);
        }
        return builder;
    }

    private void guard(HttpResponse<String> answer, String type, JsonNode body)
            throws IOException, InterruptedException {
        String path = answer.uri().getPath();
        if (!path.startsWith("/api/")) {
            return;
        }
        SpecGuard current = guard.get();
        if (current == null) {
            String specification = http.send(request("/v3/api-docs").build(), HttpResponse.BodyHandlers.ofString())
                    .body();
            current = new SpecGuard(specification);
            guard.set(current);
        }
        String method = answer.request().method();
        List<String> faults = new ArrayList<>(current.faults(method, path, answer.statusCode(), type, body));
        current.headers(method, path, answer.statusCode()).stream()
                .filter(header -> answer.headers().firstValue(header).isEmpty())
                .forEach(header -> faults.add("the header " + header + " is missing"));
        if (!faults.isEmpty()) {
            throw new AssertionError("the answer breaks the specification: " + faults + "\n" + answer.body());
        }
    }

    public Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> answer = http.send(request.build(), HttpResponse.BodyHandlers.ofString());
            String type = answer.headers().firstValue("Content-Type").orElse("");
            JsonNode body = type.contains("json") ? json.readTree(answer.body()) : json.createObjectNode();
            guard(answer, type, body);
            return new Answer(answer.statusCode(), answer, body);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
