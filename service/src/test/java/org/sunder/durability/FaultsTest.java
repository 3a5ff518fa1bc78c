package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.MovedClock;
import org.sunder.Patience;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import tools.jackson.databind.JsonNode;

/**
 * What goes wrong around the service: no connection left, rows held, callers that send slowly or break off, a clock that jumps.
 * Nothing acknowledged is lost or doubled, nobody has to mend anything, and no fault of a caller's is called one of ours.
 */
@ExtendWith(OutputCaptureExtension.class)
@InThoroughRuns
class FaultsTest {

    private static final int CONNECTIONS = 3;

    private static final MovedClock CLOCK = new MovedClock();

    @TempDir
    static Path folder;

    private static ConfigurableApplicationContext service;
    private static Client guest;
    private static Client keeper;

    private String key = "";
    private Client client;

    @BeforeAll
    static void start() throws IOException {
        service = new SpringApplicationBuilder(SunderApplication.class)
                .initializers((GenericApplicationContext context) -> context.registerBean(
                        "movedClock", Clock.class, () -> CLOCK, definition -> definition.setPrimary(true)))
                .run(
                        "--server.port=0",
                        "--server.tomcat.connection-timeout=4s", // longer than the database waits for a row
                        "--server.tomcat.keep-alive-timeout=20s",
                        "--spring.datasource.hikari.maximum-pool-size=" + CONNECTIONS,
                        "--spring.datasource.hikari.connection-timeout=1000",
                        "--sunder.access.keys=true",
                        "--sunder.data-folder=" + folder);
        guest = new Client(service.getEnvironment());
        keeper = guest.with(
                Files.readString(folder.resolve("first-admin-key.txt")).trim());
    }

    @BeforeEach
    void aFlyer() {
        key = entered();
        client = guest.with(key);
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    @AfterEach
    void setTheClockRight() {
        CLOCK.set(Duration.ZERO);
    }

    @Test
    void withoutAConnectionLeftItAsksToComeAgainAndGoesOnByItself() throws Exception {
        String joint = client.joint();
        String report = Samples.test("0.80", "none");
        HikariDataSource pool = service.getBean(HikariDataSource.class);
        List<Connection> held = new ArrayList<>();
        try {
            for (int i = 0; i < CONNECTIONS; i++) {
                held.add(pool.getConnection());
            }
            for (Client.Answer answer : List.of(
                    client.post(joint + "/ground-tests", report, "Idempotency-Key", "no connection"),
                    client.get(joint + "/next-charge"))) {
                assertThat(answer.status()).as(answer.raw().body()).isEqualTo(503);
                assertThat(answer.header("Retry-After")).isNotEmpty();
            }
            assertThat(guest.get("/livez").status()).isEqualTo(200);
            assertThat(guest.get("/readyz").status()).isEqualTo(503);
        } finally {
            for (Connection each : held) {
                each.close();
            }
        }
        assertThat(logged(joint)).isZero();
        assertThat(client.post(joint + "/ground-tests", report, "Idempotency-Key", "no connection")
                        .status())
                .isEqualTo(201);
        assertThat(logged(joint)).isEqualTo(1);
    }

    @Test
    void moreAskersThanConnectionsAreAllAnsweredAndNoneIsKept() throws Exception {
        String joint = client.joint();
        List<CompletableFuture<Integer>> asked = IntStream.range(0, 8 * CONNECTIONS)
                .mapToObj(i -> inItsOwnThread(() ->
                        sentUntilTaken(joint + "/ground-tests", Samples.test("0.8" + i % 10, "none"), "asker " + i)))
                .toList();
        assertThat(asked.stream().map(CompletableFuture::join)).containsOnly(201);
        assertThat(logged(joint)).isEqualTo(8 * CONNECTIONS);
        var pool = service.getBean(HikariDataSource.class).getHikariPoolMXBean();
        assertThat(Patience.until(() -> pool.getActiveConnections() == 0, pool::getActiveConnections))
                .as("connections in use with nobody asking: " + pool.getActiveConnections())
                .isTrue();
    }

    @Test
    void aRowThatIsHeldForLongIsNoFailureOfOurs() throws Exception {
        String joint = client.joint();
        String report = Samples.test("0.80", "none");
        try (Connection other = service.getBean(HikariDataSource.class).getConnection()) {
            other.setAutoCommit(false);
            other.createStatement().execute("update flyer set fleet_version = fleet_version + 1");
            Client.Answer answer = client.post(joint + "/ground-tests", report, "Idempotency-Key", "held");
            assertThat(answer.status()).as(answer.raw().body()).isEqualTo(503);
            assertThat(answer.header("Retry-After")).isNotEmpty();
            assertThat(answer.body().path("detail").asString()).contains("Nothing was stored");
            other.rollback();
            other.setAutoCommit(true);
        }
        assertThat(client.post(joint + "/ground-tests", report, "Idempotency-Key", "held")
                        .status())
                .isEqualTo(201);
        assertThat(logged(joint)).isEqualTo(1);
    }

    @Test
    void anImportThatComesSlowlyHoldsNobodyUpAndOneCutOffLeavesNothing(CapturedOutput output) throws Exception {
        int before = output.length();
        client.joint();
        String export = client.get("/api/export").raw().body();
        String otherKey = entered();
        Client other = guest.with(otherKey);
        try (Half slow = new Half(otherKey, "/api/import", export)) {
            Thread.sleep(300); // what would be begun with it is begun by then
            assertThat(other.post("/api/airframes", Samples.AIRFRAME).status())
                    .as("a change of the flyer whose import is on its way")
                    .isEqualTo(201);
            assertThat(service.getBean(HikariDataSource.class)
                            .getHikariPoolMXBean()
                            .getActiveConnections())
                    .as("connections in use while it comes")
                    .isZero();
            assertThat(slow.isAnswered()).as("still on its way").isFalse();
        }
        assertThat(airframes(other)).as("the one entered meanwhile").hasSize(1);
        assertThat(other.post("/api/import", export).status()).isEqualTo(200);
        assertThat(airframes(other)).hasSize(2);
        assertThat(output.toString().substring(before)).doesNotContain("ERROR");
    }

    @Test
    void aBodyThatStopsComingIsNeitherTakenNorAFailureOfOurs(CapturedOutput output) throws Exception {
        int before = output.length();
        List<Half> slow = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            slow.add(new Half(key, "/api/airframes", Samples.AIRFRAME));
        }
        assertThat(guest.with(entered())
                        .post("/api/airframes", Samples.AIRFRAME)
                        .status())
                .as("meanwhile")
                .isEqualTo(201);
        for (Half each : slow) {
            try (each) {
                String answer = each.answer();
                assertThat(answer).startsWith("HTTP/1.1 408").contains("/problems/broken-off");
            }
        }
        assertThat(airframes(client)).isEmpty();
        assertThat(output.toString().substring(before)).doesNotContain("ERROR");
    }

    @Test
    void aClockThatJumpsAheadLosesNothingAndEndsSessionsForAsLong() {
        String joint = client.joint();
        String cookie = session();
        String report = Samples.test("0.80", "none");
        var before = client.post(joint + "/ground-tests", report, "Idempotency-Key", "before");
        CLOCK.set(Duration.ofDays(29));
        assertThat(guest.get(joint, "Cookie", cookie).status()).isEqualTo(200);
        CLOCK.set(Duration.ofDays(800));
        assertThat(guest.get(joint, "Cookie", cookie).status()).isEqualTo(401);
        var meanwhile = client.post(joint + "/ground-tests", Samples.test("0.85", "none"), "Idempotency-Key", "ahead");
        assertThat(meanwhile.status()).isEqualTo(201);
        CLOCK.set(Duration.ZERO);
        assertThat(guest.get(joint, "Cookie", cookie).status()).isEqualTo(200);
        assertThat(client.post(joint + "/ground-tests", report, "Idempotency-Key", "before")
                        .raw()
                        .body())
                .isEqualTo(before.raw().body());
        assertThat(client.post(joint + "/ground-tests", Samples.test("0.85", "none"), "Idempotency-Key", "ahead")
                        .raw()
                        .body())
                .isEqualTo(meanwhile.raw().body());
        assertThat(client.get(joint + "/next-charge").body())
                .isEqualTo(meanwhile.body().path("next"));
        assertThat(logged(joint)).isEqualTo(2);
    }

    @Test
    void aClockThatGoesBackRefusesWhatItTakesForTheFutureUntilItIsRight() {
        String joint = client.joint();
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        String fired = now().minusMinutes(5).toString();
        String report = Samples.test("0.85", "partial", fired);
        CLOCK.set(Duration.ofDays(-800));
        String older = client.joint();
        var refused = client.post(joint + "/ground-tests", report, "Idempotency-Key", "behind");
        assertThat(refused.status()).as(refused.raw().body()).isEqualTo(422);
        assertThat(refused.fault("/firedAt").path("detail").asString()).contains(fired);
        assertThat(logged(joint)).isEqualTo(1);
        assertThat(walked()).contains(joint(older), joint(joint)).doesNotHaveDuplicates();
        CLOCK.set(Duration.ZERO);
        assertThat(client.post(joint + "/ground-tests", report, "Idempotency-Key", "behind")
                        .status())
                .isEqualTo(201);
        assertThat(logged(joint)).isEqualTo(2);
        assertThat(walked()).contains(joint(older), joint(joint)).doesNotHaveDuplicates();
    }

    /** Signs a browser in. @return its cookie */
    private String session() {
        Client.Answer opened = guest.send(guest.request("/sign-in")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("key=" + key)));
        return opened.header("Set-Cookie").replaceAll(";.*", "");
    }

    private static OffsetDateTime now() {
        return OffsetDateTime.now(ZoneOffset.UTC);
    }

    /** The airframe of a joint, as the list of airframes names it. */
    private String joint(String address) {
        return client.get(address).body().path("airframeId").asString();
    }

    /** Every airframe, a page of one at a time. */
    private List<String> walked() {
        List<String> all = new ArrayList<>();
        String next = "/api/airframes?limit=1";
        while (!next.isEmpty()) {
            Client.Answer page = client.get(next);
            page.body().path("items").forEach(item -> all.add(item.path("id").asString()));
            String cursor = page.body().path("next").asString("");
            next = cursor.isEmpty() ? "" : "/api/airframes?limit=1&cursor=" + cursor;
        }
        return all;
    }

    private int logged(String joint) {
        return client.get(joint + "/ground-tests").body().path("items").size();
    }

    private Integer sentUntilTaken(String path, String body, String once) {
        Patience patience = new Patience(Patience.ofThisProcess());
        int status = 503;
        while (status == 503 && patience.lasts()) {
            status = client.post(path, body, "Idempotency-Key", once).status();
        }
        return status;
    }

    private static <T> CompletableFuture<T> inItsOwnThread(Supplier<T> work) {
        return CompletableFuture.supplyAsync(work, task -> new Thread(task).start());
    }

    private static JsonNode airframes(Client flyer) {
        return flyer.get("/api/airframes").body().path("items");
    }

    /** Enters a flyer. @return the key */
    private static String entered() {
        String flyer = keeper.post("/api/flyers", "{\"name\":\"another\"}").header("Location");
        return keeper.post(flyer + "/access-keys", "{\"name\":\"key\",\"scope\":\"full\"}")
                .body()
                .path("key")
                .asString();
    }

    /** A request of which half the body has been sent. */
    private static final class Half implements AutoCloseable {

        private final Socket socket;

        Half(String key, String path, String body) throws IOException {
            int port = guest.request("/").build().uri().getPort();
            byte[] content = body.getBytes(StandardCharsets.UTF_8);
            String head = "POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nAuthorization: Bearer " + key
                    + "\r\nContent-Type: application/json\r\nContent-Length: " + content.length + "\r\n\r\n";
            socket = new Socket(InetAddress.getLoopbackAddress(), port);
            socket.setSoTimeout(30_000);
            socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(content, 0, content.length / 2);
            socket.getOutputStream().flush();
        }

        /** What comes back, up to the end of the connection. */
        String answer() throws IOException {
            try {
                return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            } catch (SocketException e) {
                return ""; // reset: nothing was answered
            }
        }

        boolean isAnswered() throws IOException {
            return socket.getInputStream().available() > 0;
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }
    }
}
