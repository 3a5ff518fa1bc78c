package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.Samples;

/** Keys, sessions and what stands around them. */
@KeyedServiceTest
class AccessTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Environment environment;

    @Test
    void theFirstAdminKeyStandsInAFileThatOnlyItsOwnerReads() throws IOException {
        Path file = Path.of("target", "keyed" + System.getProperty("sunder.test.fork", ""), "first-admin-key.txt");
        String secret = Files.readString(file).trim();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(client.with(secret).get("/api/flyers").status()).isEqualTo(200);
    }

    @Test
    void anAdminEntersAFlyerWhoGivesKeysOfTheirOwn() {
        Client admin = client.with(issue(CurrentFlyer.LOCAL, Scope.ADMIN));
        String flyer = admin.post("/api/flyers", "{\"name\":\"flyer 7\"}").header("Location");
        var given = admin.post(flyer + "/access-keys", "{\"name\":\"laptop\",\"scope\":\"full\"}");
        Client theirs = client.with(given.body().path("key").asString());
        assertThat(theirs.post("/api/airframes", Samples.AIRFRAME).status()).isEqualTo(201);
        var phone = theirs.post("/api/access-keys", "{\"name\":\"phone\",\"scope\":\"log-only\"}");
        assertThat(phone.status()).isEqualTo(201);
        assertThat(theirs.post("/api/access-keys", "{\"name\":\"more\",\"scope\":\"admin\"}")
                        .status())
                .isEqualTo(403);
        assertThat(theirs.get("/api/access-keys").body().path("items")).hasSize(2);
    }

    @Test
    void formsOfPagesChangeThingsOnlyWithAKeyThatWrites() {
        String nobodys = "/01890000-0000-7000-8000-000000000000/";
        for (String form : new String[] {
            "/joints" + nobodys + "copy",
            "/joints" + nobodys + "remove",
            "/airframes" + nobodys + "remove",
            "/airframes" + nobodys + "bring-back"
        }) {
            assertThat(fresh(Scope.LOG_ONLY).post(form, "").status()).as(form).isEqualTo(403);
            assertThat(fresh(Scope.FULL).post(form, "").status()).as(form).isNotEqualTo(403);
        }
        for (String path : new String[] {"/example", "/example/away"}) {
            assertThat(fresh(Scope.LOG_ONLY).post(path, "").status()).isEqualTo(403);
            assertThat(fresh(Scope.READ_ONLY).post(path, "").status()).isEqualTo(403);
            assertThat(fresh(Scope.FULL).post(path, "").status()).isEqualTo(302);
            assertThat(fresh(Scope.FULL)
                            .post(path, "", "Sec-Fetch-Site", "cross-site")
                            .status())
                    .as("pressed on another site")
                    .isEqualTo(403);
        }
    }

    @Test
    void aKeyIsKeptAsAHashAndShownOnce() {
        Client full = fresh(Scope.FULL);
        var made = full.post("/api/access-keys", "{\"name\":\"guest\",\"scope\":\"read-only\"}");
        String secret = made.body().path("key").asString();
        assertThat(secret).matches("sunder_[A-Za-z0-9_-]{32}");
        assertThat(full.get("/api/access-keys").raw().body())
                .contains(made.body().path("prefix").asString())
                .doesNotContain(secret);
        assertThat(jdbc.sql("select count(*) from access_key where digest = ?")
                        .params(secret)
                        .query(Integer.class)
                        .single())
                .isZero();
        assertThat(client.with(secret).get("/api/airframes").status()).isEqualTo(200);
        assertThat(full.get("/api/access-keys")
                        .body()
                        .path("items")
                        .get(0)
                        .path("lastUsedAt")
                        .asString(""))
                .isNotEmpty();
    }

    @Test
    void aRevokedKeyAndItsSessionsAreRefusedAtOnce() {
        Client full = fresh(Scope.FULL);
        var made = full.post("/api/access-keys", "{\"name\":\"phone\",\"scope\":\"log-only\"}");
        String secret = made.body().path("key").asString();
        String cookie = session(secret);
        assertThat(client.get("/api/airframes", "Cookie", cookie).status()).isEqualTo(200);
        assertThat(full.delete("/api/access-keys/" + made.body().path("id").asString())
                        .status())
                .isEqualTo(204);
        var refused = client.with(secret).get("/api/airframes");
        assertThat(refused.status()).isEqualTo(401);
        assertThat(refused.body().path("type").asString()).isEqualTo("/problems/key-refused");
        assertThat(client.get("/api/airframes", "Cookie", cookie).status()).isEqualTo(401);
    }

    @Test
    void aKeyEndsWhenItSays() {
        Client full = fresh(Scope.FULL);
        var past = full.post(
                "/api/access-keys", "{\"name\":\"a\",\"scope\":\"full\",\"expiresAt\":\"2020-01-01T00:00:00Z\"}");
        assertThat(past.status()).isEqualTo(400);
        assertThat(past.fault("/expiresAt").path("allowed").asString()).isEqualTo("a time to come");
        String secret = keys.issue(
                        flyers.enter("brief").id(),
                        "brief",
                        Scope.FULL,
                        java.time.Instant.now().minusSeconds(1))
                .secret();
        assertThat(client.with(secret).get("/api/airframes").status()).isEqualTo(401);
    }

    @Test
    void aBrowserIsLedToSignInAndBack() {
        var led = client.get("/fleet", "Accept", "text/html");
        assertThat(led.status()).isEqualTo(303);
        assertThat(led.header("Location")).isEqualTo("/sign-in?to=%2Ffleet");
        assertThat(client.get("/sign-in?to=/fleet").raw().body()).contains("value=\"/fleet\"");
        assertThat(client.get("/sign-in?to=//evil.example").raw().body()).contains("value=\"/\"");
        assertThat(client.get("/sign-in?to=%22%3E%3Cscript%3E").raw().body()).doesNotContain("<script>");
        assertThat(client.get("/assets/paper.css").status()).isEqualTo(200);
        assertThat(form("/sign-in", "key=sunder_wrong").status()).isEqualTo(401);
        var opened = form("/sign-in", "key=" + issue(flyers.enter("b").id(), Scope.FULL) + "&to=/api/airframes");
        assertThat(opened.status()).isIn(302, 303);
        assertThat(opened.header("Location")).endsWith("/api/airframes");
        assertThat(opened.header("Set-Cookie"))
                .contains("HttpOnly")
                .contains("SameSite=Strict")
                .contains("Path=/");
        String cookie = opened.header("Set-Cookie").replaceAll(";.*", "");
        assertThat(client.get("/api/airframes", "Cookie", cookie).status()).isEqualTo(200);
        assertThat(form("/sign-out", "", "Cookie", cookie).status()).isEqualTo(303);
        assertThat(client.get("/api/airframes", "Cookie", cookie).status()).isEqualTo(401);
    }

    @Test
    void behindTlsCookieAndHeadersKeepBrowsersToIt() {
        String[] tls = {"X-Forwarded-Proto", "https", "X-Forwarded-For", "203.0.113.7"};
        String secret = issue(flyers.enter("t").id(), Scope.FULL);
        var opened = form("/sign-in", "key=" + secret, tls);
        assertThat(opened.header("Set-Cookie"))
                .startsWith("__Host-sunder_session=")
                .contains("Secure", "HttpOnly", "SameSite=Strict", "Path=/")
                .doesNotContain("Domain");
        assertThat(opened.header("Strict-Transport-Security")).contains("max-age=31536000", "includeSubDomains");
        String cookie = opened.header("Set-Cookie").replaceAll(";.*", "");
        assertThat(client.get("/api/airframes", with(tls, "Cookie", cookie)).status())
                .isEqualTo(200);
        String planted = cookie.replace("__Host-", "");
        assertThat(client.get("/api/airframes", with(tls, "Cookie", planted)).status())
                .as("a cookie that another host may have set")
                .isEqualTo(401);
        assertThat(form("/sign-out", "", with(tls, "Cookie", cookie)).header("Set-Cookie"))
                .startsWith("__Host-sunder_session=;")
                .contains("Secure", "Max-Age=0");
        assertThat(client.get("/api/airframes", with(tls, "Cookie", cookie)).status())
                .isEqualTo(401);
        assertThat(client.get("/sign-in").header("Strict-Transport-Security"))
                .as("without TLS it would lock a laptop out")
                .isEmpty();
    }

    @Test
    void aRequestIsNeverSentBackAsAnAnswer() throws IOException {
        assertThat(raw("TRACE /livez HTTP/1.1", "Host: localhost\r\nX-Told: secret"))
                .startsWith("HTTP/1.1 4")
                .doesNotContain("X-Told")
                .doesNotContain("secret");
    }

    @Test
    void anotherSiteCannotChangeAnything() {
        String secret = issue(flyers.enter("c").id(), Scope.FULL);
        String cookie = session(secret);
        for (String[] from : new String[][] {
            {"Sec-Fetch-Site", "cross-site"},
            {"Sec-Fetch-Site", "same-site"},
            {"Origin", "https://evil.example"},
            {"Origin", "null"}
        }) {
            var answer = client.post("/api/airframes", Samples.AIRFRAME, "Cookie", cookie, from[0], from[1]);
            assertThat(answer.status()).as(from[1]).isEqualTo(403);
            assertThat(answer.body().path("type").asString()).isEqualTo("/problems/from-another-site");
        }
        assertThat(client.get("/api/airframes", "Cookie", cookie).body().path("items"))
                .isEmpty();
        var own = client.post("/api/airframes", Samples.AIRFRAME, "Cookie", cookie, "Sec-Fetch-Site", "same-origin");
        assertThat(own.status()).isEqualTo(201);
    }

    @Test
    void anUnknownHostIsRefused() throws IOException {
        assertThat(raw("GET /livez HTTP/1.1", "Host: evil.example")).startsWith("HTTP/1.1 421");
        assertThat(raw("GET /livez HTTP/1.1", "Host: club.example.org:8443")).startsWith("HTTP/1.1 200");
        assertThat(raw("GET /livez HTTP/1.1", "Host: [::1]:8080")).startsWith("HTTP/1.1 200");
        assertThat(raw("GET /livez HTTP/1.1", "Host: localhost")).startsWith("HTTP/1.1 200");
    }

    @Test
    void everyAnswerCarriesTheSecurityHeaders() throws IOException {
        Client full = fresh(Scope.FULL);
        for (Client.Answer answer : new Client.Answer[] {
            full.get("/api/airframes"),
            full.get("/api/airframes/nonsense"),
            client.get("/api/airframes"),
            full.get("/nothing/here"),
            client.with("wrong").get("/api/airframes"),
            full.post("/api/airframes", "{"),
            client.get("/sign-in"),
            client.get("/readyz")
        }) {
            assertThat(answer.header("Content-Security-Policy"))
                    .as(answer.raw().uri().toString())
                    .contains("default-src 'self'")
                    .contains("frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.header("Referrer-Policy")).isEqualTo("no-referrer");
            assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
            assertThat(answer.header("X-Request-Id")).isNotEmpty();
        }
        assertThat(raw("GET /api/airframes?x=| HTTP/1.1", "Host: localhost"))
                .startsWith("HTTP/1.1 400")
                .contains("application/problem+json")
                .containsIgnoringCase("nosniff")
                .doesNotContain("Exception");
    }

    @Test
    void theCardAllowsItsOwnStyleByHash() throws Exception {
        Client full = fresh(Scope.FULL);
        String joint = full.joint();
        var card = java.net.http.HttpClient.newHttpClient()
                .send(
                        full.request(joint + "/ladder?depth=1")
                                .header("Accept", "text/html")
                                .build(),
                        java.net.http.HttpResponse.BodyHandlers.ofString());
        String page = card.body();
        String style = page.substring(page.indexOf("<style>") + 7, page.indexOf("</style>"));
        byte[] digest =
                java.security.MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
        assertThat(card.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("'sha256-" + java.util.Base64.getEncoder().encodeToString(digest) + "'")
                .doesNotContain("unsafe");
    }

    @Test
    void onlyHealthIsShownWithoutAKey() {
        assertThat(client.get("/readyz").body().path("status").asString()).isEqualTo("UP");
        assertThat(client.get("/actuator/health").body().has("components")).isFalse();
        assertThat(client.get("/actuator/prometheus").status()).isEqualTo(401);
        assertThat(client.get("/actuator").status()).isEqualTo(401);
        assertThat(client.get("/actuator/env").status()).isEqualTo(401);
        assertThat(client.get("/h2-console").status()).isEqualTo(401);
        assertThat(client.get("/assets/").status()).as("a list of a folder").isEqualTo(404);
        var metrics = fresh(Scope.READ_ONLY).get("/actuator/prometheus");
        assertThat(metrics.status()).isEqualTo(200);
        assertThat(metrics.raw().body()).contains("http_server_requests_seconds_count");
        assertThat(fresh(Scope.ADMIN).get("/actuator/env").status()).isEqualTo(404);
    }

    @Test
    void theRequestIdFindsAProblem() {
        var answer = client.get("/api/airframes", "X-Request-Id", "field-17");
        assertThat(answer.header("X-Request-Id")).isEqualTo("field-17");
        assertThat(answer.body().path("requestId").asString()).isEqualTo("field-17");
        assertThat(client.get("/api/airframes", "X-Request-Id", "a b<c>").header("X-Request-Id"))
                .doesNotContain("<");
    }

    private String issue(java.util.UUID flyer, Scope scope) {
        return keys.issue(flyer, "test", scope, null).secret();
    }

    private Client fresh(Scope scope) {
        return client.with(issue(flyers.enter("someone").id(), scope));
    }

    private String session(String secret) {
        return form("/sign-in", "key=" + secret).header("Set-Cookie").replaceAll(";.*", "");
    }

    private Client.Answer form(String path, String body, String... headers) {
        return client.send(client.request(path, headers)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private static String[] with(String[] headers, String name, String value) {
        return Stream.concat(Arrays.stream(headers), Stream.of(name, value)).toArray(String[]::new);
    }

    private String raw(String line, String host) throws IOException {
        int port = environment.getRequiredProperty("local.server.port", Integer.class);
        try (Socket socket = new Socket(java.net.InetAddress.getLoopbackAddress(), port)) {
            String request = line + "\r\n" + host + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
