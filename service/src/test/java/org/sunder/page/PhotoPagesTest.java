package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;
import org.sunder.photo.Pictures;

/** The photo of a test in the row of its test, small and only loaded where it is looked at. */
class PhotoPagesTest extends OneJoint {

    @Test
    void theRowOfItsTestShowsThePhotoAndLeadsToIt() {
        String with = logged("0.80", "10:20");
        String without = logged("0.90", "11:20");
        String photo = with + "/photo";
        String link = "<a class=\"photo\" href=\"" + photo
                + "\"><img loading=\"lazy\" width=\"96\" height=\"72\" src=\"" + photo + "\" alt=\"Photo: 0.80 g";
        String plan = page(joint) + "/plan";
        assertThat(read(plan)).doesNotContain("<img").contains("data-photo-of=\"" + id(with) + "\"");
        assertThat(read("/import")).doesNotContain("Your photos");
        var kept = client.send(client.request(photo)
                .header("Content-Type", "image/png")
                .PUT(BodyPublishers.ofByteArray(Pictures.png(8, 8))));
        assertThat(kept.status()).as(kept.raw().body()).isEqualTo(201);
        assertThat(read(plan))
                .contains(link, "data-tag=\"" + kept.header("ETag").replace("\"", "&quot;") + "\"")
                .doesNotContain(without + "/photo\">");
        assertThat(read(page(airframe))).contains(link).doesNotContain(without + "/photo\">");
        client.post(with + "/void", "{\"reason\":\"igniter\"}");
        assertThat(read(plan)).as("void, with its photo").contains(link);
        assertThat(read(page(airframe)))
                .as("told of once, not with its void again")
                .containsOnlyOnce(link);
        assertThat(read("/import")).contains("Your photos", "/api/export?photos=true&amp;photosAfter=");
    }

    private String logged(String grams, String time) {
        return client.post(joint + "/ground-tests", Samples.test(grams, "none", "2026-05-03T" + time + ":00+01:00"))
                .header("Location");
    }

    private static String id(String test) {
        return test.replaceAll(".*/", "");
    }
}
