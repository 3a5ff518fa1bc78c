package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Client;
import org.sunder.Samples;

/** A code for a phone at hand: read by the reader of another library (ZXing), it signs in once, to log and no more. */
@KeyedServiceTest
class PhoneTest {

    private static final Pattern ADDRESS = Pattern.compile("<code class=\"address\">([^<]*)</code>");
    private static final int MODULE = 4; // pixels

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    JdbcTemplate jdbc;

    Client builder;
    UUID flyer;

    @BeforeEach
    void aBuilder() {
        flyer = flyers.enter("builder").id();
        builder = client.with(keys.issue(flyer, "desk", Scope.FULL, null).secret());
    }

    @Test
    void theCodeSaysWhatTheAddressSays() throws Exception {
        String page = shown(builder, "Wren's");
        assertThat(decoded(page)).isEqualTo(address(page)).contains("/sign-in?to=/field#once=sunder_");
        assertThat(page).contains("Point the camera of Wren&#39;s&#39;s phone here", "ten minutes");
    }

    @Test
    void itSignsInOnceToLogAndNoMore() {
        String joint = builder.joint();
        String secret = secret(shown(builder, "Wren"));
        assertThat(client.with(secret).get("/api/airframes").status())
                .as("no key for programs")
                .isEqualTo(401);
        String cookie = signedIn(secret);
        assertThat(asked(cookie, joint + "/next-charge").status()).isEqualTo(200);
        assertThat(sent(cookie, joint + "/ground-tests", Samples.test("0.80", "none"))
                        .status())
                .isEqualTo(201);
        assertThat(sent(cookie, "/api/airframes", Samples.AIRFRAME).status()).isEqualTo(403);
        assertThat(signIn(secret).status()).as("a second phone").isEqualTo(401);
    }

    /** By what its key was called then; it travels in the flyer's own export, and in no snapshot of the pool: {@code PoolApiTest}. */
    @Test
    void aTestSaysWhoLoggedIt() {
        String joint = builder.joint();
        String cookie = signedIn(secret(shown(builder, "Wren")));
        sent(cookie, joint + "/ground-tests", Samples.test("0.80", "none"));
        builder.post(joint + "/ground-tests", Samples.test("0.90", "none", "2026-05-03T11:20:00+01:00"));
        String flight = builder.post(
                        joint + "/flight-events", Samples.test("0.95", "separated", "2026-05-04T11:20:00+01:00"))
                .body()
                .at("/test/loggedBy")
                .asString();
        assertThat(flight).isEqualTo("desk");
        var tests = builder.get(joint + "/ground-tests").body().path("items");
        assertThat(tests.get(0).path("loggedBy").asString()).isEqualTo("desk");
        assertThat(tests.get(1).path("loggedBy").asString()).isEqualTo("phone: Wren");
        assertThat(builder.get("/api/field-kit")
                        .body()
                        .at("/joints/0/tests/2/loggedBy")
                        .asString())
                .isEqualTo("phone: Wren");
        assertThat(builder.get(joint.replace("/api", "") + "/plan", "Accept", "text/html")
                        .raw()
                        .body())
                .contains("by the phone of Wren", "with the key desk");
        String airframe = builder.get(joint).body().path("airframeId").asString();
        assertThat(builder.get("/airframes/" + airframe, "Accept", "text/html")
                        .raw()
                        .body())
                .contains("Logged by the phone of Wren.");
        keys.of(flyer).stream()
                .filter(each -> each.name().equals("phone: Wren"))
                .forEach(each -> keys.revoke(flyer, each.id()));
        String export = builder.get("/api/export").raw().body();
        assertThat(export).contains("\"loggedBy\":\"phone: Wren\"", "\"loggedBy\":\"desk\"");
        Client another = client.with(keys.issue(flyers.enter("another").id(), "other desk", Scope.FULL, null)
                .secret());
        assertThat(another.post("/api/import", export).status()).isEqualTo(200);
        assertThat(another.get("/api/export").raw().body()).isEqualTo(export);
    }

    @Test
    void itSignsOutWhereThePhonesAreListed() {
        String cookie = signedIn(secret(shown(builder, "Wren")));
        assertThat(client.get("/phone", "Cookie", cookie, "Accept", "text/html")
                        .raw()
                        .body())
                .contains("action=\"/sign-out\"", "Tests logged in it and not sent yet stay in it");
        assertThat(client.send(client.request("/sign-out", "Cookie", cookie, "Sec-Fetch-Site", "same-origin")
                                .POST(HttpRequest.BodyPublishers.noBody()))
                        .status())
                .isEqualTo(303);
        assertThat(asked(cookie, "/api/airframes").status()).isEqualTo(401);
    }

    @Test
    void itEndsWithItsKeyAndWithTime() {
        String secret = secret(shown(builder, "Wren"));
        String cookie = signedIn(secret);
        var key = keys.of(flyer).stream()
                .filter(each -> each.name().equals("phone: Wren"))
                .findFirst()
                .orElseThrow();
        assertThat(key.scope()).isEqualTo(Scope.LOG_ONLY);
        assertThat(builder.get("/phone", "Accept", "text/html").raw().body())
                .contains("<strong>Wren</strong>", key.id().toString());
        assertThat(post(builder, "/phone/end", "id=" + key.id()).status()).isEqualTo(302);
        assertThat(builder.get("/phone", "Accept", "text/html").raw().body()).doesNotContain("<strong>Wren</strong>");
        assertThat(asked(cookie, "/api/airframes").status()).isEqualTo(401);
        String late = secret(shown(builder, "Wren"));
        jdbc.update("update access_key set expires_at = created_at where flyer_id = ? and once", flyer);
        assertThat(signIn(late).status()).isEqualTo(401);
        String revoked = secret(shown(builder, "Wren"));
        keys.of(flyer).forEach(each -> keys.revoke(flyer, each.id()));
        assertThat(signIn(revoked).status()).isEqualTo(401);
    }

    @Test
    void onlyWhoMayChangeThingsShowsOne() {
        for (Scope scope : new Scope[] {Scope.LOG_ONLY, Scope.READ_ONLY}) {
            Client other = client.with(keys.issue(flyer, "other", scope, null).secret());
            assertThat(post(other, "/phone", "name=Wren").status()).isEqualTo(403);
        }
        assertThat(post(builder, "/phone", "name=%20").raw().body()).contains("Say whose phone it is.");
        assertThat(post(builder, "/phone", "name=" + "x".repeat(61)).raw().body())
                .contains("up to 60 characters")
                .doesNotContain("once=");
    }

    private String shown(Client by, String whose) {
        var answer = post(by, "/phone", "name=" + URLEncoder.encode(whose, StandardCharsets.UTF_8));
        assertThat(answer.status()).isEqualTo(200);
        return answer.raw().body();
    }

    private static Client.Answer post(Client by, String path, String form) {
        return by.send(by.request(path, "Accept", "text/html", "Sec-Fetch-Site", "same-origin")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    private Client.Answer signIn(String secret) {
        return post(client, "/sign-in", "to=/field&key=" + secret);
    }

    private String signedIn(String secret) {
        var answer = signIn(secret);
        assertThat(answer.status()).isEqualTo(302);
        assertThat(answer.header("Location")).endsWith("/field");
        return answer.header("Set-Cookie").replaceAll(";.*", "");
    }

    private Client.Answer asked(String cookie, String path) {
        return client.get(path, "Cookie", cookie);
    }

    private Client.Answer sent(String cookie, String path, String body) {
        return client.post(path, body, "Cookie", cookie, "Sec-Fetch-Site", "same-origin");
    }

    private static String address(String page) {
        Matcher found = ADDRESS.matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1).replace("&amp;", "&");
    }

    private static String secret(String page) {
        return address(page).replaceAll(".*once=", "");
    }

    /** What a camera would see: the path of dark modules, drawn as pixels. */
    private static String decoded(String page) throws Exception {
        Matcher size = Pattern.compile("class=\"code\" viewBox=\"0 0 (\\d+)").matcher(page);
        assertThat(size.find()).isTrue();
        int width = Integer.parseInt(size.group(1)) * MODULE;
        int[] pixels = new int[width * width];
        Arrays.fill(pixels, 0xffffff);
        Matcher module = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(page);
        while (module.find()) {
            for (int y = 0; y < MODULE; y++) {
                int from = (Integer.parseInt(module.group(2)) * MODULE + y) * width
                        + Integer.parseInt(module.group(1)) * MODULE;
                Arrays.fill(pixels, from, from + MODULE, 0);
            }
        }
        var picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, width, pixels)));
        return new QRCodeReader().decode(picture).getText();
    }
}
