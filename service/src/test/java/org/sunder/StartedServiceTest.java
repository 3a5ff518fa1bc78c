package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The service as a process of its own: how it stops, what it logs, and what it says of a wrong setting. */
class StartedServiceTest {

    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final int CALLERS = 8;

    private final HttpClient http = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    /** A caller whose connection is refused was not taken; one whose request was taken gets the whole answer. */
    @Test
    void aStopSignalLetsRequestsInFlightFinish() throws Exception {
        Process service = start();
        try {
            URI airframes = URI.create("http://127.0.0.1:" + port() + "/api/airframes");
            AtomicInteger answered = new AtomicInteger();
            CountDownLatch busy = new CountDownLatch(40);
            List<CompletableFuture<List<Integer>>> callers = new ArrayList<>();
            for (int i = 0; i < CALLERS; i++) {
                callers.add(CompletableFuture.supplyAsync(
                        () -> enter(airframes, answered, busy), work -> new Thread(work).start()));
            }
            assertThat(busy.await(60, TimeUnit.SECONDS)).isTrue();
            service.destroy();
            List<Integer> statuses =
                    callers.stream().flatMap(caller -> caller.join().stream()).toList();
            assertThat(service.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(statuses).containsOnly(201);
            assertThat(stored()).as("rows stored against answers that arrived").isEqualTo(answered.get());
        } finally {
            service.destroyForcibly();
        }
    }

    @Test
    void structuredLogsAreOneObjectALineWithTheRequestIdAndNoKey() throws Exception {
        Process service =
                start("--logging.structured.format.console=ecs", "--logging.level.org.springframework.web=debug");
        String key = "sunder_thisKeyMustNotBeLogged0123456789";
        String id;
        try {
            HttpRequest request = HttpRequest.newBuilder(URI.create(
                            "http://127.0.0.1:" + port() + "/api/airframes?forged=%0A%7B%22message%22:%22x%22%7D"))
                    .header("Authorization", "Bearer " + key)
                    .build();
            HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(400);
            id = answer.headers().firstValue("X-Request-Id").orElseThrow();
        } finally {
            service.destroy();
            service.waitFor(60, TimeUnit.SECONDS);
        }
        List<JsonNode> lines = log().lines().map(new JsonMapper()::readTree).toList();
        assertThat(lines)
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.has("@timestamp")).isTrue());
        assertThat(lines).anySatisfy(line -> assertThat(line.toString()).contains(id));
        assertThat(log()).doesNotContain(key);
    }

    @Test
    void aWrongSettingIsNamedAndTheProcessFails() throws Exception {
        Process service = start("--sunder.access.requests-per-minute=many");
        assertThat(service.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(service.exitValue()).isNotZero();
        assertThat(log()).contains("sunder.access.requests-per-minute").doesNotContain("\tat org.springframework");
    }

    private List<Integer> enter(URI airframes, AtomicInteger answered, CountDownLatch busy) {
        HttpClient own = HttpClient.newHttpClient();
        HttpRequest request = HttpRequest.newBuilder(airframes)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(Samples.AIRFRAME))
                .build();
        List<Integer> statuses = new ArrayList<>();
        try {
            while (true) {
                statuses.add(
                        own.send(request, HttpResponse.BodyHandlers.ofString()).statusCode());
                answered.incrementAndGet();
                busy.countDown();
            }
        } catch (IOException e) {
            return statuses; // the door is shut
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private int stored() throws Exception {
        String url = "jdbc:h2:file:" + folder.resolve("sunder");
        try (Connection connection = DriverManager.getConnection(url, "sunder", "");
                ResultSet rows = connection.createStatement().executeQuery("select count(*) from airframe")) {
            rows.next();
            return rows.getInt(1);
        }
    }

    private Process start(String... settings) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                SunderApplication.class.getName(),
                "--server.port=0",
                "--sunder.data-folder=" + folder));
        command.addAll(List.of(settings));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
    }

    private int port() throws Exception {
        for (int i = 0; i < 1200; i++) {
            Matcher started = PORT.matcher(log());
            if (started.find()) {
                return Integer.parseInt(started.group(1));
            }
            Thread.sleep(100);
        }
        throw new IllegalStateException(log());
    }

    private String log() throws IOException {
        Path log = folder.resolve("log");
        return Files.exists(log) ? Files.readString(log) : "";
    }
}
