package org.sunder.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** The photo of a test over HTTP: kept once, clean, and apart from the log. */
@ServiceTest
class PhotoApiTest {

    private static final byte[] JPEG =
            Pictures.withSegment(Pictures.jpeg(320, 240), 0xE1, Pictures.exif(6, ByteOrder.LITTLE_ENDIAN));
    private static final byte[] PNG = Pictures.png(100, 80);

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    @Autowired
    JdbcTemplate jdbc;

    String joint;
    String test;
    String photo;

    @BeforeEach
    void aTest() {
        emptyLog.empty();
        joint = client.joint();
        test = client.post(joint + "/ground-tests", Samples.test("0.80", "partial"))
                .header("Location");
        photo = test + "/photo";
    }

    @Test
    void aPhotoIsKeptWithoutWhatTheCameraWroteAndReadAgain() {
        assertThat(client.get(photo).status()).isEqualTo(404);
        var kept = put(JPEG, "image/jpeg");
        assertThat(kept.status()).as(kept.raw().body()).isEqualTo(201);
        assertThat(kept.header("Location")).isEqualTo(photo);
        assertThat(kept.body().path("mediaType").asString()).isEqualTo("image/jpeg");
        assertThat(kept.body().path("width").asInt()).isEqualTo(320);
        assertThat(kept.body().path("height").asInt()).isEqualTo(240);
        HttpResponse<byte[]> read = bytes();
        assertThat(read.statusCode()).isEqualTo(200);
        assertThat(read.body()).isEqualTo(CleanPhoto.of(JPEG).content());
        assertThat(read.body()).hasSize(kept.body().path("bytes").asInt());
        assertThat(new String(read.body(), StandardCharsets.ISO_8859_1)).doesNotContain(Pictures.SECRET);
        assertThat(header(read, "Content-Type")).isEqualTo("image/jpeg");
        assertThat(header(read, "Content-Disposition"))
                .isEqualTo("inline; filename=\"test-" + test.replaceAll(".*/", "") + ".jpg\"");
        assertThat(header(read, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(read, "Cache-Control"))
                .contains("private", "no-cache")
                .doesNotContain("no-store");
        assertThat(header(read, "ETag")).isEqualTo(kept.header("ETag")).startsWith("\"");
        HttpResponse<byte[]> unchanged = bytes("If-None-Match", kept.header("ETag"));
        assertThat(unchanged.statusCode()).isEqualTo(304);
        assertThat(unchanged.body()).isEmpty();
        assertThat(header(unchanged, "ETag")).isEqualTo(kept.header("ETag"));
    }

    @Test
    void theSameAgainChangesNothingAndAnotherMustNameTheOneBefore() {
        String first = put(JPEG, "image/jpeg").header("ETag");
        var again = put(JPEG, "image/jpeg");
        assertThat(again.status()).isEqualTo(200);
        assertThat(again.header("ETag")).isEqualTo(first);
        assertThat(put(PNG, "image/png").status()).isEqualTo(428);
        assertThat(put(PNG, "image/png", "If-Match", "\"another\"").status()).isEqualTo(412);
        assertThat(bytes().body()).isEqualTo(CleanPhoto.of(JPEG).content());
        var replaced = put(PNG, "image/png", "If-Match", first);
        assertThat(replaced.status()).isEqualTo(200);
        assertThat(replaced.header("ETag")).isNotEqualTo(first);
        assertThat(header(bytes(), "Content-Type")).isEqualTo("image/png");
        assertThat(header(bytes(), "Content-Disposition")).endsWith(".png\"");
    }

    @Test
    void aPhotoIsRemovedForGood() {
        assertThat(client.delete(photo, "If-Match", "*").status()).isEqualTo(404);
        String tag = put(JPEG, "image/jpeg").header("ETag");
        assertThat(client.delete(photo).status()).isEqualTo(428);
        assertThat(client.delete(photo, "If-Match", "\"another\"").status()).isEqualTo(412);
        assertThat(client.delete(photo, "If-Match", tag).status()).isEqualTo(204);
        assertThat(client.get(photo).status()).isEqualTo(404);
        assertThat(contents()).isZero();
        assertThat(put(PNG, "image/png", "If-Match", tag).status())
                .as("nothing is there that could be named")
                .isEqualTo(412);
        assertThat(put(PNG, "image/png").status()).isEqualTo(201);
    }

    @Test
    void whatIsNoPhotoIsRefusedAndNothingKept() {
        assertRefused(415, put(JPEG, "text/plain"), "image/jpeg or image/png");
        assertRefused(415, put(JPEG, "application/json"), "image/jpeg or image/png");
        assertRefused(415, client.send(client.request(photo).PUT(BodyPublishers.ofByteArray(JPEG))), "image/png");
        assertRefused(415, put("GIF89a".getBytes(StandardCharsets.UTF_8), "image/png"), "neither a JPEG nor a PNG");
        assertRefused(415, put(new byte[0], "image/png"), "no photo in the body");
        assertRefused(422, put(Arrays.copyOf(JPEG, JPEG.length / 2), "image/jpeg"), "ends in the middle");
        assertRefused(422, put(Arrays.copyOf(PNG, PNG.length - 5), "image/png"), "ends in the middle");
        byte[] large = Pictures.joined(JPEG, new byte[CleanPhoto.MOST_BYTES]);
        assertRefused(413, put(large, "image/jpeg"), "a photo 5 MB");
        var streamed = client.send(client.request(photo)
                .header("Content-Type", "image/jpeg")
                .PUT(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large))));
        assertRefused(413, streamed, "a photo 5 MB");
        String nowhere = "/api/ground-tests/" + UUID.randomUUID() + "/photo";
        assertThat(client.get(nowhere).status()).isEqualTo(404);
        assertThat(put(nowhere, JPEG, "image/jpeg").status()).isEqualTo(404);
    }

    @Test
    void theBytesAreTrustedAndNotWhatTheyAreCalled() {
        assertThat(put(PNG, "image/jpeg").body().path("mediaType").asString()).isEqualTo("image/png");
        assertThat(header(bytes(), "Content-Type")).isEqualTo("image/png");
    }

    @Test
    void justUnderFiveMegabytesAreTaken() {
        byte[] large = Pictures.joined(JPEG, new byte[CleanPhoto.MOST_BYTES - JPEG.length]);
        assertThat(put(large, "image/jpeg").status()).isEqualTo(201);
        byte[] noise = Pictures.noise(4_500_000, 7);
        assertThat(put(noise, "image/png", "If-Match", "*").status()).isEqualTo(200);
        assertThat(bytes().body()).isEqualTo(CleanPhoto.of(noise).content());
    }

    @Test
    void aVoidTestKeepsItsPhotoAndTheTestIsAsItWas() {
        String before = client.get(test).raw().body();
        put(JPEG, "image/jpeg");
        assertThat(client.get(test).raw().body()).isEqualTo(before);
        client.post(test + "/void", "{\"reason\":\"igniter\"}");
        assertThat(bytes().statusCode()).isEqualTo(200);
    }

    @Test
    void aFlyerKeepsSoManyBytesAndNoMore() {
        put(JPEG, "image/jpeg");
        jdbc.update("update photo set bytes = ?", (int) (Photos.MOST_BYTES - 10));
        String other = client.post(joint + "/ground-tests", Samples.test("0.90", "none", "2026-05-03T11:20:00+01:00"))
                .header("Location");
        var refused = put(other + "/photo", PNG, "image/png");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("detail").asString()).contains("1000 photos at most, of 500 MB");
        assertThat(contents()).isEqualTo(1);
    }

    /** With the table of bytes out of reach, all but the photo itself is answered. */
    @Test
    void onlyThePhotoItselfReadsItsBytes() {
        put(JPEG, "image/jpeg");
        jdbc.execute("alter table photo_content rename to out_of_reach");
        try {
            assertThat(bytes().statusCode()).as("the test bites").isEqualTo(500);
            String airframe = "/api/airframes/"
                    + client.get(joint).body().path("airframeId").asString();
            String[] paths = {
                test,
                joint + "/ground-tests",
                joint + "/next-charge",
                joint + "/ladder?depth=1",
                airframe + "/history",
                "/api/field-kit?depth=1",
                "/api/export",
                "/",
                joint.replace("/api", "") + "/plan",
                airframe.replace("/api", "")
            };
            for (String path : paths) {
                String type = path.startsWith("/api/") ? "application/json" : "text/html";
                assertThat(client.get(path, "Accept", type).status()).as(path).isEqualTo(200);
            }
            assertThat(client.post(joint + "/ground-tests", Samples.test("0.95", "none", "2026-05-03T11:20:00+01:00"))
                            .status())
                    .isEqualTo(201);
        } finally {
            jdbc.execute("alter table out_of_reach rename to photo_content");
        }
    }

    private void assertRefused(int status, Client.Answer answer, String words) {
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(status);
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(answer.body().path("detail").asString()).contains(words);
        assertThat(contents()).isZero();
    }

    private int contents() {
        return jdbc.queryForObject("select count(*) from photo_content", Integer.class);
    }

    private Client.Answer put(byte[] file, String type, String... headers) {
        return put(photo, file, type, headers);
    }

    private Client.Answer put(String path, byte[] file, String type, String... headers) {
        return client.send(
                client.request(path, headers).header("Content-Type", type).PUT(BodyPublishers.ofByteArray(file)));
    }

    private HttpResponse<byte[]> bytes(String... headers) {
        return HttpClient.newHttpClient()
                .sendAsync(client.request(photo, headers).build(), BodyHandlers.ofByteArray())
                .join();
    }

    private static String header(HttpResponse<byte[]> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }
}
