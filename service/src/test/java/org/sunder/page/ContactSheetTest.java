package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every picture is on the sheet, under its page, day beside night. */
class ContactSheetTest {

    @Test
    void eachPageHasItsPicturesInOneRow(@TempDir Path folder) throws IOException {
        for (String name : new String[] {
            "start-390", "start-dark-390", "start-1280", "start-dark-1280", "flight-day-390", "field-refused-390"
        }) {
            Files.write(folder.resolve(name + ".png"), new byte[] {1});
        }
        Files.write(folder.resolve("card-a4.pdf"), new byte[] {1});
        ContactSheet.write(folder);
        String sheet = Files.readString(folder.resolve("index.html"));
        assertThat(sheet)
                .contains("3 pages and states", "<h2 id=\"start\">", "<h2 id=\"flight-day\">", "field-refused-390.png")
                .doesNotContain("card-a4", "<h2 id=\"start-dark\">");
        assertThat(sheet.substring(sheet.indexOf("<h2 id=\"start\">")))
                .containsSubsequence("start-390.png", "start-dark-390.png", "start-1280.png", "start-dark-1280.png");
        assertThat(sheet.split("<figure>", -1)).as("one figure a picture").hasSize(7);
        assertThat(sheet.split("<span></span>", -1))
                .as("a gap where one is missing")
                .hasSize(7);
    }
}
