package org.sunder.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.EarlierVersion;
import org.sunder.InThoroughRuns;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A database of an earlier version is opened, brought to the shape of this one, and answered as it was then. */
@InThoroughRuns
class EarlierDatabaseTest {

    @TempDir
    Path folder;

    @Test
    void isAnsweredAsItWas() throws Exception {
        EarlierVersion seventh = new EarlierVersion(7);
        seventh.unpack(folder);
        try (StartedService service = new StartedService(folder)) {
            int port = service.port();
            seventh.assertAnswered(path -> read("http://127.0.0.1:" + port + path));
            assertThat(folder.resolve("backups"))
                    .as("copied before it was changed")
                    .isNotEmptyDirectory();
        }
    }

    private static JsonNode read(String address) {
        try {
            HttpResponse<String> answer = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).as(address).isEqualTo(200);
            return new JsonMapper().readTree(answer.body());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
