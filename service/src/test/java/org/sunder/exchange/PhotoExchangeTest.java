package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Base64;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;
import org.sunder.photo.Pictures;

/** Photos out and in again: only where they are asked for, without loss, in parts that an import takes. */
@KeyedServiceTest
class PhotoExchangeTest {

    private static final String WITH_PHOTOS = "/api/export?photos=true";

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    Client one;
    Client other;
    String joint;
    int tests;

    @BeforeEach
    void prepare() {
        one = flyer();
        other = flyer();
        joint = one.joint();
    }

    @Test
    void photosTravelWhereTheyAreAskedForAndComeBackByteForByte() {
        keep(Pictures.withSegment(Pictures.jpeg(64, 48), 0xE1, Pictures.exif(6, ByteOrder.BIG_ENDIAN)));
        keep(Pictures.png(64, 48));
        String without = exported(one, "/api/export");
        assertThat(without).contains("\"photosLeftOut\":2").doesNotContain("\"photos\"");
        String with = exported(one, WITH_PHOTOS);
        assertThat(with).contains("\"photos\":[{").doesNotContain("photosLeftOut", "photosAfter");
        var taken = other.post("/api/import", with);
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        assertThat(exported(other, WITH_PHOTOS)).isEqualTo(with);
        assertThat(exported(other, "/api/export")).isEqualTo(without);
        var again = other.post("/api/import", with);
        assertThat(again.body().path("added").asInt()).isZero();
        assertThat(again.body().path("known").asInt())
                .isEqualTo(taken.body().path("added").asInt());
        assertThat(other.post("/api/import", without).body().path("added").asInt())
                .as("what it says of photos is no fault")
                .isZero();
        assertThat(exported(other, WITH_PHOTOS)).isEqualTo(with);
    }

    @Test
    void aPhotoInAnImportIsCheckedAndCleanedAsOneThatIsSent() {
        byte[] clean = Pictures.png(30, 20);
        keep(clean);
        String with = exported(one, WITH_PHOTOS);
        String empty = exported(other, WITH_PHOTOS);
        byte[][] refused = {
            Arrays.copyOf(clean, clean.length - 3), "GIF89a......".getBytes(java.nio.charset.StandardCharsets.UTF_8), {}
        };
        for (byte[] file : refused) {
            assertRefused(400, "/photos/0/content", withContent(with, text(file)), empty);
        }
        assertRefused(400, "/photos/0/content", withContent(with, "no Base64!"), empty);
        assertRefused(400, "/photos/0/content", withContent(with, text(new byte[5 * 1024 * 1024 + 1])), empty);
        assertRefused(400, "/photos/0/name", with.replace("\"storedAt\"", "\"name\":\"x\",\"storedAt\""), empty);
        assertRefused(400, "/photos", with.replaceFirst("\"photos\":\\[.*\\]", "\"photos\":{}"), empty);
        assertRefused(
                409,
                "/photos/0",
                with.replaceFirst(
                        "\"testId\":\"[^\"]*\",\"storedAt\"",
                        "\"testId\":\"01890000-0000-7000-8000-000000000000\",\"storedAt\""),
                empty);
        byte[] told = Pictures.withChunk(clean, "tEXt", Pictures.secret("Comment"));
        assertThat(other.post("/api/import", withContent(with, text(told))).status())
                .isEqualTo(200);
        assertThat(exported(other, WITH_PHOTOS)).isEqualTo(with);
        String another = withContent(with, text(Pictures.png(31, 20)));
        var conflict = other.post("/api/import", another);
        assertThat(conflict.status()).isEqualTo(409);
        assertThat(conflict.fault("/photos/0").path("detail").asString()).contains("another photo");
    }

    @Test
    @InThoroughRuns
    void moreThanAnImportTakesComesInPartsThatItTakes() {
        for (int i = 0; i < 8; i++) {
            keep(Pictures.noise(4_000_000, i));
        }
        String path = WITH_PHOTOS;
        int parts = 0;
        while (!path.isEmpty()) {
            var part = one.get(path);
            assertThat(part.status()).isEqualTo(200);
            assertThat(part.raw().body().length()).isLessThanOrEqualTo(20 * 1024 * 1024);
            var taken = other.post("/api/import", part.raw().body());
            assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
            String next = part.body().path("photosAfter").asString("");
            path = next.isEmpty() ? "" : WITH_PHOTOS + "&photosAfter=" + next;
            assertThat(part.header("Link")).isEqualTo(path.isEmpty() ? "" : "<" + path + ">; rel=\"next\"");
            parts++;
        }
        assertThat(parts).isEqualTo(3);
        String page = one.get("/import", "Accept", "text/html").raw().body();
        assertThat(page).contains("Photos, file 1 of 3", "Photos, file 3 of 3");
        for (String link : page.split("href=\"", -1)) {
            if (link.startsWith("/api/export?")) {
                String address =
                        link.replaceAll("\".*", "").replace("&amp;", "&").replaceAll("(?s)\\R.*", "");
                String body = one.get(address).raw().body();
                assertThat(body.length()).isLessThanOrEqualTo(20 * 1024 * 1024);
                var known = other.post("/api/import", body);
                assertThat(known.body().path("added").asInt()).isZero();
                parts += known.body().path("known").asInt();
            }
        }
        assertThat(parts).as("each photo is on one of the links").isEqualTo(3 + 8);
    }

    private void assertRefused(int status, String pointer, String document, String empty) {
        var refused = other.post("/api/import", document);
        assertThat(refused.status()).as(refused.raw().body()).isEqualTo(status);
        assertThat(refused.fault(pointer).isMissingNode())
                .as(refused.raw().body())
                .isFalse();
        assertThat(exported(other, WITH_PHOTOS)).isEqualTo(empty);
    }

    private static String withContent(String document, String content) {
        return document.replaceFirst("\"content\":\"[^\"]*\"", "\"content\":\"" + content + "\"");
    }

    private static String text(byte[] file) {
        return Base64.getEncoder().encodeToString(file);
    }

    private void keep(byte[] file) {
        String test = one.post(
                        joint + "/ground-tests",
                        Samples.test("0.80", "none", "2026-05-03T10:" + (10 + tests++) + ":00+01:00"))
                .header("Location");
        var kept = one.send(
                one.request(test + "/photo").header("Content-Type", "image/png").PUT(BodyPublishers.ofByteArray(file)));
        assertThat(kept.status()).as(kept.raw().body()).isEqualTo(201);
    }

    private static String exported(Client flyer, String path) {
        return flyer.get(path).raw().body();
    }

    private Client flyer() {
        return client.with(keys.issue(flyers.enter("someone").id(), "test", Scope.FULL, null)
                .secret());
    }
}
