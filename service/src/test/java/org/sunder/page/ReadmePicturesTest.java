package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import org.sunder.Client;

/**
 * The pictures of the README, of the demo fleet: written to target/screenshots, and with -Dpictures.write=true to service/docs/pictures
 * too, where the README shows them.
 */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:h2:mem:pictures;DB_CLOSE_DELAY=-1")
@Import(Client.class)
@ActiveProfiles("demo")
@DirtiesContext
@Tag("browser")
@EnabledIfSystemProperty(named = "sunder.test.thorough", matches = "true")
class ReadmePicturesTest {

    private static final Path MADE = Path.of("target", "screenshots");
    private static final Path SHOWN = Path.of("docs", "pictures");

    @LocalServerPort
    int port;

    @Autowired
    Client client;

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @Test
    void homeAJointAndThePhone() throws IOException {
        Browser browser = Browser.shared();
        String joint = joint();
        browser.width(Browser.DESK);
        browser.go("http://127.0.0.1:" + port + "/");
        browser.find("main svg");
        write("home", browser.view());
        browser.go("http://127.0.0.1:" + port + "/joints/" + joint + "/plan");
        browser.find("main svg");
        write("joint", browser.view());
        browser.width(Browser.PHONE);
        browser.go("http://127.0.0.1:" + port + "/field/" + joint);
        browser.click("#cautions-read");
        browser.find(".caution-line");
        browser.script("scrollTo(0, 0)");
        write("field", browser.view());
    }

    /** One that has something to fire. */
    private String joint() {
        for (var airframe : client.get("/api/airframes").body().path("items")) {
            String joints = "/api/airframes/" + airframe.path("id").asString() + "/joints";
            for (var joint : client.get(joints).body().path("items")) {
                String id = joint.path("id").asString();
                String evidence = client.get("/api/joints/" + id + "/next-charge")
                        .body()
                        .path("evidence")
                        .asString();
                if (evidence.equals("building")) {
                    return id;
                }
            }
        }
        throw new AssertionError("no joint of the demo fleet is building");
    }

    private static void write(String name, byte[] png) throws IOException {
        Files.createDirectories(MADE);
        Files.write(MADE.resolve("readme-" + name + ".png"), png);
        if (Boolean.getBoolean("pictures.write")) {
            Files.createDirectories(SHOWN);
            Files.write(SHOWN.resolve(name + ".png"), png);
        }
        assertThat(SHOWN.resolve(name + ".png")).exists();
    }
}
