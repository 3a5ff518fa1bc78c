package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.sunder.page.Labels.field;
import static org.sunder.page.Labels.pick;
import static org.sunder.page.Labels.press;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.EmptyLog;
import org.sunder.ServiceTest;
import org.sunder.page.Weather.Sky;

/** From a new airframe to a flight charge on a phone, half of it without network, by nothing but the pages. */
@ServiceTest
@Tag("browser")
class WalkAtTheFieldTest {

    private static final int MOST_TESTS = 12;

    @Autowired
    EmptyLog emptyLog;

    @LocalServerPort
    int port;

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @Test
    void leadsFromANewAirframeToAFlightCharge() throws IOException {
        emptyLog.empty();
        try (Weather weather = new Weather(port)) {
            Browser phone = Browser.shared();
            phone.go(weather.url("/"));
            phone.click("a[href='/airframes/new']");
            field(phone, "Name", "Godwit");
            phone.click(".main-action");
            describeTheJoint(phone);
            phone.find(".charge");
            int tests = 0;
            while (tests < MOST_TESTS && phone.text("#next h2").equals("Fire next on the ground")) {
                // Every other test is fired without network, and sent when it is back.
                boolean offline = tests % 2 == 1;
                awaitPlan(phone);
                weather.turns(offline ? Sky.DOWN : Sky.CLEAR);
                fire(phone);
                tests++;
                if (offline) {
                    phone.says(".state", "Saved on this phone, not sent yet");
                    weather.turns(Sky.CLEAR);
                    phone.sendWhatWaits();
                }
                phone.says("#unsent", "Nothing waits to be sent");
                int done = tests;
                phone.until(
                        "test " + done + " counted",
                        d -> phone.text("#about").contains(done + (done == 1 ? " test" : " tests") + " counted")
                                ? true
                                : null);
            }
            assertThat(tests).isBetween(2, MOST_TESTS - 1);
            assertThat(phone.text("#next h2")).isEqualTo("Enough is known to fly");
            String flight = phone.text(".charge");
            phone.click("#next a[href$='/flight-day']");
            assertThat(phone.text(".charges dd")).isEqualTo(flight);
            assertThat(phone.text(".caution-line")).contains("nobody in line");
            phone.click(".caution-line summary");
            assertThat(phone.text(".caution-line ul")).contains("Nobody stands in line");
            assertThat(phone.text(".ticks")).contains("3 × M2.5");
        }
    }

    private static void describeTheJoint(Browser phone) {
        field(phone, "Name of the joint", "nose to bay");
        field(phone, "Inner diameter at the joint", "92");
        field(phone, "Length of the shoulder", "45");
        field(phone, "Mass forward of the joint", "0,9");
        field(phone, "Mass aft of the joint", "4.1");
        field(phone, "Pull that parts the joint without pins", "15");
        field(phone, "Inner length", "620");
        field(phone, "Solid tip", "40");
        field(phone, "How many", "3");
        pick(phone, "Limit of the structure", "gaugePressure");
        field(phone, "Highest gauge pressure", "300");
        // By hand: an ogive of 2.200 L, three pins of 205.6 N and 15 N of fit: 95.1 kPa; nothing is in it yet.
        phone.says("#result", "95.0 kPa");
        phone.says("#result", "2.2 L");
        press(phone, "Add an item");
        pick(phone, "Kind", "intrusion");
        field(phone, "What it is", "bay pushed in");
        field(phone, "How far it comes in", "45");
        press(phone, "Add an item");
        field(phone, "What it is", "main parachute");
        field(phone, "Mass", "340");
        phone.says("#result", "1.60 L");
        press(phone, "Add an item");
        field(phone, "What it is", "harness");
        pick(phone, "Made of", "aramid");
        field(phone, "Mass", "120");
        phone.says("#result", "1.52 L");
        assertThat(phone.text("#result svg")).contains("main parachute");
        phone.picture("walk-joint-390");
        phone.click("#setup .main-action");
        phone.find("#answer");
        phone.click(".actions a[href^='/field/']");
    }

    /** What this joint does: partial from 0.72 g, separated from 0.84 g. */
    private static void fire(Browser phone) {
        double charge = Double.parseDouble(phone.value("#charge"));
        String outcome = charge < 0.72 ? "none" : charge < 0.84 ? "partial" : "separated";
        phone.click("input[value=" + outcome + "]");
        phone.click(".main-action");
    }

    private static void awaitPlan(Browser phone) {
        Object ready = phone.later("""
                const done = arguments[0];
                const id = location.pathname.split('/').pop();
                import('/assets/store.js').then(async ({ get }) => {
                  for (;;) {
                    const joint = await get('joints', id);
                    if (joint && joint.tree && joint.tree.basis.tests === joint.advice.basis.tests) return done('ready');
                    await new Promise(r => setTimeout(r, 50));
                  }
                });
                """);
        assertThat(ready).isEqualTo("ready");
    }
}
