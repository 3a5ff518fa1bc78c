package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.page.Weather.Sky;
import org.sunder.photo.CleanPhoto;
import org.sunder.photo.Pictures;
import tools.jackson.databind.JsonNode;

/** A photo taken at the field, in a real browser: on the phone until the service has it, and sent after its test. */
class PhotoAtTheFieldTest extends AtAJoint {

    private static final String CHOOSE = ".entry .choose-photo input";

    @TempDir
    Path pictures;

    @Test
    void aPhotoWaitsOnThePhoneAndFollowsItsTest() throws IOException {
        byte[] picture = Pictures.withSegment(Pictures.jpeg(640, 480), 0xE1, Pictures.exif(6, ByteOrder.LITTLE_ENDIAN));
        field();
        weather.turns(Sky.DOWN);
        phone.click("input[value=none]");
        phone.click(".main-action");
        phone.says(".state", "Saved on this phone, not sent yet");
        choose(picture);
        phone.says(".photo-state", "Photo: on this phone, not sent yet");
        phone.says("#unsent", "1 test and 1 photo are not sent yet");
        field();
        phone.says(".photo-state", "Photo: on this phone, not sent yet");
        assertThat(log()).isEmpty();
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".photo-state", "Photo: sent");
        phone.says("#unsent", "Nothing waits to be sent");
        String photo = "/api/ground-tests/" + log().get(0).path("id").asString() + "/photo";
        assertThat(bytes(photo)).isEqualTo(CleanPhoto.of(picture).content());
        assertThat(phone.find(".photo-state a").getDomAttribute("href")).isEqualTo(photo);
        assertThat(phone.blocked()).isEmpty(); // that nothing gets through is complained of too
    }

    @Test
    @InThoroughRuns
    void aLargePhotoIsMadeSmallerAndWhatIsNoneIsRefusedInWords() throws IOException {
        field();
        phone.click("input[value=none]");
        phone.click(".main-action");
        phone.says(".state", "Stored by the service");
        choose("GIF89a, by any name".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        phone.says(".entry .fault", "neither a JPEG nor a PNG");
        choose(Pictures.joined(Pictures.jpeg(4000, 3000), new byte[6_000_000]));
        phone.says(".photo-state", "Photo: sent");
        byte[] kept = bytes("/api/ground-tests/" + log().get(0).path("id").asString() + "/photo");
        assertThat(kept.length).isLessThan(CleanPhoto.MOST_BYTES);
        assertThat(Pictures.shown(kept).getWidth()).isEqualTo(2560);
        assertThat(Pictures.shown(kept).getHeight()).isEqualTo(1920);
    }

    @Test
    @InThoroughRuns
    void onTheJointsPageAPhotoIsAddedAndRemoved() throws IOException {
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        phone.go(weather.url(page(joint) + "/plan"));
        choose(".photo-cell .choose-photo input", Pictures.png(64, 48));
        Object loaded = phone.until("the photo is shown", d -> {
            Object width = phone.script(
                    "const i = document.querySelector('.photo img'); if (i) i.scrollIntoView(); return i && i.complete ? i.naturalWidth : 0");
            return Long.valueOf(64).equals(width) ? width : null;
        });
        assertThat(loaded).isEqualTo(64L);
        assertThat(phone.complaints()).isEmpty();
        phone.click(".photo-cell button");
        phone.says(".photo-cell .actions", "Yes, remove it for good");
        phone.click(".photo-cell button");
        phone.find(".photo-cell .choose-photo");
        assertThat(client.get("/api/ground-tests/" + log().get(0).path("id").asString() + "/photo")
                        .status())
                .isEqualTo(404);
    }

    private void field() {
        phone.go(weather.url("/field/" + joint.replaceAll(".*/", "")));
        phone.find(".charge");
    }

    private void choose(byte[] file) throws IOException {
        choose(CHOOSE, file);
    }

    private void choose(String css, byte[] file) throws IOException {
        Path named = pictures.resolve("photo.jpg");
        Files.write(named, file);
        phone.find(css).sendKeys(named.toString());
    }

    private JsonNode log() {
        return client.get(joint + "/ground-tests").body().path("items");
    }

    private byte[] bytes(String path) {
        return HttpClient.newHttpClient()
                .sendAsync(client.request(path).build(), HttpResponse.BodyHandlers.ofByteArray())
                .join()
                .body();
    }
}
