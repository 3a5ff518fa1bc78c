package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.json.JsonMapper;

/** What a flyer writes is text, whatever it looks like: nothing of it runs in a page, a card or a picture. */
@ServiceTest
@Tag("browser")
class PayloadTest {

    private static final int OPENED = 3; // joints whose own pages are opened; all of them stand in the lists
    private static final int OF_ONE = 5; // joints of an airframe, whose history has all of their texts

    private final JsonMapper json = new JsonMapper();

    @Autowired
    Client client;

    @LocalServerPort
    int port;

    @Autowired
    EmptyLog emptyLog;

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @AfterEach
    void away() {
        emptyLog.empty();
    }

    @Test
    @InThoroughRuns
    void nothingWrittenRuns() {
        emptyLog.empty();
        assertThat(Payloads.ALL).hasSizeGreaterThanOrEqualTo(50);
        List<String> joints = new ArrayList<>();
        List<String> paths = new ArrayList<>(List.of("/", "/fleet", "/field"));
        String airframe = "";
        for (String payload : Payloads.ALL) {
            String body = "{\"name\":" + text(payload) + ",\"notes\":" + text(payload) + "}";
            String entered = client.post("/api/airframes", body).header("Location");
            if (joints.size() % OF_ONE == 0) {
                airframe = entered;
                paths.add(airframe.replace("/api", ""));
            }
            joints.add(aJoint(airframe, payload));
            if (joints.size() % OF_ONE == 0 || joints.size() == Payloads.ALL.size()) {
                int first = (joints.size() - 1) / OF_ONE * OF_ONE;
                aTest(joints.get(first), Payloads.ALL.subList(first, joints.size()));
            }
        }
        paths.add(airframe.replace("/api", "") + "/flight-day");
        Browser browser = Browser.shared();
        int step = joints.size() / OPENED / OF_ONE * OF_ONE; // the first of an airframe has the test
        for (int i = 0; i < joints.size(); i += step) {
            String joint = joints.get(i);
            paths.add(joint + "/ladder");
            paths.add(joint.replace("/api/joints", "/field"));
            paths.add(joint.replace("/api", ""));
        }
        for (String path : paths) {
            browser.go("http://127.0.0.1:" + port + path);
            settle(browser, path);
            assertThat(browser.script("return window.run === undefined"))
                    .as("something ran in " + path)
                    .isEqualTo(true);
            assertThat((String) browser.script("return document.documentElement.outerHTML"))
                    .as("markup of a text in " + path)
                    .doesNotContain("<img src=\"x\"", "<iframe", "onload=\"run");
        }
        assertThat(System.getProperty("run")).isNull();
    }

    /** A joint with a payload in its name, in a content and in the note of its setup. */
    private String aJoint(String airframe, String payload) {
        String text = text(payload);
        String setup = Samples.SETUP
                .replace("\"main parachute\"", text)
                .replaceFirst("}$", Matcher.quoteReplacement(",\"note\":" + text + "}"));
        String body = "{\"name\":" + text + ",\"event\":\"main\",\"setup\":" + setup + "}";
        return client.post(airframe + "/joints", body).header("Location");
    }

    /** A test with several payloads in its notes and in the reason why it is void. */
    private void aTest(String joint, List<String> payloads) {
        String text = text(String.join(" and ", payloads));
        String report = Samples.test("0.50", "none").replaceFirst("}$", "");
        Client.Answer test = client.post(joint + "/ground-tests", report + ",\"notes\":" + text + "}");
        assertThat(test.status()).as(test.raw().body()).isEqualTo(201);
        Client.Answer voided = client.post(test.header("Location") + "/void", "{\"reason\":" + text + "}");
        assertThat(voided.status()).as(voided.raw().body()).isLessThan(300);
    }

    private static void settle(Browser browser, String path) {
        if (path.startsWith("/joints/")) {
            browser.find("#result svg");
        } else if (path.startsWith("/field/")) {
            browser.find(".charge");
        } else if (path.equals("/field")) {
            browser.find(".choice");
        }
    }

    private String text(String words) {
        return json.writeValueAsString(words);
    }
}
