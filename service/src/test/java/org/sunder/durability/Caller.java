package org.sunder.durability;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Asks a service by a key; the service may be gone in the middle of an answer, and come back at another address. */
final class Caller {

    private static final HttpClient HTTP =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static final Duration LONGEST = Duration.ofMinutes(2);
    private static final JsonMapper JSON = new JsonMapper();

    private final Supplier<String> base;
    private final String key;

    /**
     * A caller.
     *
     * @param base the present address, e.g. {@code http://127.0.0.1:8080}
     * @param key the access key, or empty where none is shown
     */
    Caller(Supplier<String> base, String key) {
        this.base = base;
        this.key = key;
    }

    /** The same place, asked by another key. */
    Caller with(String otherKey) {
        return new Caller(base, otherKey);
    }

    /** What was answered. */
    record Answer(int status, String body) {

        JsonNode json() {
            return JSON.readTree(body);
        }
    }

    /** Reads. @throws IOException where no whole answer came */
    Answer get(String path) throws IOException {
        return send(request(path).GET());
    }

    /** Enters something under an idempotency key. @throws IOException where no whole answer came: it may be stored or not */
    Answer post(String path, String body, String once) throws IOException {
        return send(request(path)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", once)
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** Enters what must be taken. @return the answer */
    JsonNode enter(String path, String body) throws IOException {
        Answer answer = send(request(path)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
        if (answer.status() != 200 && answer.status() != 201) {
            throw new AssertionError(path + " was answered " + answer);
        }
        return answer.json();
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(base.get() + path)).timeout(LONGEST);
        return key.isEmpty() ? request : request.header("Authorization", "Bearer " + key);
    }

    private static Answer send(HttpRequest.Builder request) throws IOException {
        try {
            HttpResponse<String> answer = HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Answer(answer.statusCode(), answer.body());
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
