package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The specification in the repository is what the service serves, and it is complete. */
@ServiceTest
class ApiSpecTest {

    private static final Path COMMITTED = Path.of("..", "api-spec", "openapi.yaml");

    @Autowired
    Client client;

    @Test
    void theCommittedSpecificationIsTheOneServed() throws IOException {
        String served = client.get("/v3/api-docs.yaml").raw().body();
        if (Boolean.getBoolean("spec.write")) {
            Files.writeString(COMMITTED, served);
        }
        assertThat(Files.readString(COMMITTED))
                .as("write it with: mvn -pl service test -Dtest=ApiSpecTest -Dspec.write=true")
                .isEqualTo(served);
    }

    @Test
    void everyOperationIsDescribedWithExamples() {
        JsonNode spec = client.get("/v3/api-docs").body();
        assertThat(spec.path("openapi").asString()).startsWith("3.1");
        List<String> lacks = new ArrayList<>();
        spec.path("paths")
                .forEachEntry((path, item) -> item.forEachEntry((method, operation) -> {
                    String name = method + " " + path;
                    for (String field : List.of("operationId", "summary", "description", "tags")) {
                        if (operation.path(field).isMissingNode()) {
                            lacks.add(name + " has no " + field);
                        }
                    }
                    if (operation.has("requestBody")
                            && !anyExample(operation.path("requestBody").path("content"))) {
                        lacks.add(name + " has no example of its request");
                    }
                    operation.path("responses").forEachEntry((code, response) -> {
                        if (response.has("content") && !anyExample(response.path("content"))) {
                            lacks.add(name + " has no example of " + code);
                        }
                    });
                }));
        assertThat(lacks).isEmpty();
    }

    @Test
    void whateverIsCreatedMayBeAskedForTwice() {
        List<String> lacks = new ArrayList<>();
        client.get("/v3/api-docs").body().path("paths").forEachEntry((path, item) -> {
            JsonNode post = item.path("post");
            boolean key = post.path("parameters")
                    .valueStream()
                    .anyMatch(parameter -> parameter.path("name").asString().equals("Idempotency-Key"));
            if (post.path("responses").has("201") && !key) {
                lacks.add(path);
            }
        });
        assertThat(lacks).isEmpty();
    }

    @Test
    void theGuardBites() {
        SpecGuard guard = new SpecGuard(client.get("/v3/api-docs").raw().body());
        JsonMapper json = new JsonMapper();
        JsonNode wrong = json.readTree("{\"items\":[{\"id\":7}]}");
        assertThat(guard.faults("GET", "/api/airframes", 200, "application/json", wrong))
                .isNotEmpty();
        assertThat(guard.faults("GET", "/api/airframes", 299, "application/json", wrong))
                .isNotEmpty();
        JsonNode extra = json.readTree("{\"items\":[],\"undocumented\":1}");
        assertThat(guard.faults("GET", "/api/airframes", 200, "application/json", extra))
                .isNotEmpty();
    }

    private static boolean anyExample(JsonNode content) {
        return content.valueStream().anyMatch(media -> media.has("example"));
    }
}
