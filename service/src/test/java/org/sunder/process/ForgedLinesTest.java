package org.sunder.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.InThoroughRuns;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a caller sends cannot make a line of the log that the service did not write, however much is logged. */
@InThoroughRuns
class ForgedLinesTest {

    private static final String LINE = "2026-01-01T00:00:00.000Z  INFO  forged : all is well";
    private static final String STRUCTURED = "{\"@timestamp\":\"2026-01-01T00:00:00Z\",\"message\":\"forged\"}";
    private static final String KEY = "sunder_thisKeyMustNotBeLogged0123456789";
    private static final List<String> BREAKS =
            List.of("\n", "\r", "\r\n", "\u0085", "\u2028", "\u2029", "\u001b[2K\r", "\u000b", "\f");
    private static final String[] EVERYTHING = {
        "--logging.level.org.springframework.web=trace",
        "--logging.level.org.springframework.security=trace",
        "--logging.level.org.apache.coyote=debug",
        "--logging.level.org.apache.tomcat.util.http=debug"
    };
    // As readers of logs split them: Java's own lines() knows only the first two.
    private static final String ANY_BREAK = "[\\n\\r\\u0085\\u2028\\u2029\\u000b\\f]";

    @TempDir
    Path folder;

    @Test
    void noCallerWritesALineOfThePlainLog() throws Exception {
        String log = logAfterAttempts(LINE, EVERYTHING);
        assertThat(log).as("what was sent is logged").contains(LINE);
        assertThat(log.split(ANY_BREAK)).noneMatch(line -> line.startsWith("2026-01-01"));
        assertThat(log).doesNotContain("\u001b");
    }

    @Test
    void noCallerWritesALineOfTheStructuredLogWhichNamesRequestsAndNoKey() throws Exception {
        List<String> settings = new ArrayList<>(List.of(EVERYTHING));
        settings.add("--logging.structured.format.console=ecs");
        String log = logAfterAttempts(STRUCTURED, settings.toArray(String[]::new));
        assertThat(log).as("what was sent is logged").contains("forged");
        assertThat(log).as("the id of a request").contains("found-again-1").doesNotContain(KEY);
        JsonMapper json = new JsonMapper();
        List<JsonNode> lines = Arrays.stream(log.split(ANY_BREAK))
                .filter(line -> !line.isEmpty())
                .map(json::readTree)
                .toList();
        assertThat(lines).allSatisfy(line -> {
            assertThat(line.has("@timestamp")).isTrue();
            assertThat(line.at("/message").asString("")).isNotEqualTo("forged");
        });
        assertThat(log).doesNotContain("\u001b");
    }

    private String logAfterAttempts(String forged, String... settings) throws Exception {
        try (StartedService service = new StartedService(folder, settings)) {
            int port = service.port();
            send(
                    port,
                    "GET /api/airframes?no=such HTTP/1.1",
                    "X-Request-Id: found-again-1\r\nAuthorization: Bearer " + KEY,
                    "");
            for (String lineBreak : BREAKS) {
                String text = "x" + lineBreak + forged;
                String coded = URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
                send(port, "GET /api/airframes?" + coded + "=" + coded + " HTTP/1.1", "", "");
                send(port, "GET /api/joints/" + coded + " HTTP/1.1", "", "");
                send(port, "GET /api/airframes HTTP/1.1", "X-Request-Id: " + text, "");
                send(port, "GET /api/airframes HTTP/1.1", "Accept: " + text, "");
                send(port, "GET /api/airframes HTTP/1.1\r\nHost: " + text, "", "");
                send(port, "GET /api/airframes HTTP/1.1\r\nHost: " + coded, "", "");
                send(port, text + " /api/airframes HTTP/1.1", "", "");
                String name = new JsonMapper().writeValueAsString(text);
                send(port, "POST /api/airframes HTTP/1.1", "", "{\"name\":" + name + ",\"units\":" + name + "}");
                send(port, "POST /api/airframes HTTP/1.1", "", "{" + name + ":1,\"name\":\"" + text + "\"}");
            }
            stop(service);
            return service.log();
        }
    }

    private static void stop(StartedService service) throws InterruptedException {
        service.stop();
        service.exitValue();
    }

    /** Written byte by byte: no client would send these. */
    private static void send(int port, String start, String header, String body) throws IOException {
        byte[] content = body.getBytes(StandardCharsets.UTF_8);
        String head = start
                + (start.contains("\r\nHost: ") ? "" : "\r\nHost: 127.0.0.1")
                + (header.isEmpty() ? "" : "\r\n" + header)
                + "\r\nContent-Type: application/json\r\nContent-Length: " + content.length
                + "\r\nConnection: close\r\n\r\n";
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(30_000);
            // As Latin-1 where that holds it, so that 0x85 arrives as the line break it is.
            socket.getOutputStream()
                    .write(
                            StandardCharsets.ISO_8859_1.newEncoder().canEncode(head)
                                    ? head.getBytes(StandardCharsets.ISO_8859_1)
                                    : head.getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().write(content);
            socket.getOutputStream().flush();
            assertThat(socket.getInputStream().readAllBytes()).isNotEmpty();
        }
    }
}
