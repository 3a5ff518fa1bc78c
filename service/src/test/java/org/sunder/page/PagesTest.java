package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.page.Weather.Sky;

/**
 * Every page by day and by night, on a phone, a small phone and a desk: no violation of WCAG 2.2 A and AA, contrast of 7:1,
 * best practice, nothing cut off; pictures of each in target/screenshots to look at.
 */
@ServiceTest
@Tag("browser")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {

    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "wcag2aaa", "best-practice");
    private static final int SMALL = 320; // WCAG 2.2, 1.4.10 Reflow

    @Autowired
    Client client;

    @LocalServerPort
    int port;

    @TempDir
    static Path profile;

    private final Map<String, String> pages = new LinkedHashMap<>();
    private Weather weather;
    private Browser browser;
    private UUID joint;

    @BeforeAll
    void aFleet() throws IOException {
        Browser.need();
        weather = new Weather(port);
        browser = Browser.open(profile.resolve("desk"));
        String airframe = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Avocet"))
                .header("Location");
        String at = client.post(airframe + "/joints", Samples.JOINT).header("Location");
        String fewerPins = Samples.SETUP
                .replace("\"count\":3", "\"count\":2")
                .replaceFirst("}$", ",\"note\":\"two pins were enough\"}");
        String spoilt =
                client.post(at + "/ground-tests", Samples.test("0.60", "none")).header("Location");
        client.post(spoilt + "/void", "{\"reason\":\"the igniter failed\"}");
        client.post(at + "/ground-tests", Samples.test("0.75", "partial", "2026-05-03T11:20:00+01:00"));
        client.put(at + "/setup", fewerPins, "If-Match", "\"v0\"");
        client.post(at + "/ground-tests", Samples.test("0.75", "separated", "2026-05-03T12:20:00+01:00"));
        joint = UUID.fromString(at.replaceAll(".*/", ""));
        String us = client.post(
                        "/api/airframes",
                        Samples.AIRFRAME.replace("Bittern", "Curlew").replace("metric", "us"))
                .header("Location");
        String other = client.post(us + "/joints", Samples.JOINT).header("Location");
        pages.put("start", "/");
        pages.put("fleet", "/fleet");
        pages.put("airframe", airframe.replace("/api", ""));
        pages.put("airframe-us", us.replace("/api", ""));
        pages.put("flight-day", airframe.replace("/api", "") + "/flight-day");
        pages.put("new-airframe", "/airframes/new");
        pages.put("new-joint", airframe.replace("/api", "") + "/joints/new");
        pages.put("setup", at.replace("/api", ""));
        pages.put("setup-us", other.replace("/api", ""));
        pages.put("field-joint", "/field/" + joint);
        pages.put("field", "/field");
        pages.put("card", at + "/ladder");
        pages.put("not-there", "/airframes/" + UUID.randomUUID());
    }

    @AfterAll
    void away() {
        if (browser != null) {
            browser.close();
            weather.close();
        }
    }

    @Test
    void everyPageIsAccessibleByDayAndByNight() {
        pages.forEach((name, path) -> {
            for (String scheme : List.of("light", "dark")) {
                browser.prefer("prefers-color-scheme", scheme);
                browser.width(scheme.equals("light") ? Browser.PHONE : Browser.DESK);
                open(path);
                assertAccessible(name + ", " + scheme);
            }
        });
        browser.prefer("prefers-color-scheme", "light");
        assertThat(browser.blocked()).isEmpty();
    }

    @Test
    void everyPageFitsASmallPhone() {
        browser.width(SMALL);
        pages.forEach((name, path) -> {
            open(path);
            Number beyond = (Number) browser.script("return document.documentElement.scrollWidth - innerWidth");
            assertThat(beyond.intValue()).as(name + " scrolls sideways").isLessThanOrEqualTo(0);
        });
    }

    @Test
    void picturesOfEveryPage() {
        pages.forEach((name, path) -> {
            for (int width : List.of(Browser.PHONE, Browser.DESK)) {
                browser.width(width);
                open(path);
                browser.picture(name + "-" + width);
            }
        });
        browser.prefer("prefers-color-scheme", "dark");
        browser.width(Browser.PHONE);
        open(pages.get("field-joint"));
        browser.picture("field-joint-dark-390");
        browser.prefer("prefers-color-scheme", "light");
    }

    @Test
    void everyStateOfTheFieldPageIsAccessible() {
        browser.width(Browser.PHONE);
        open("/field/" + joint);
        browser.find(".charge");
        browser.click("summary");
        browser.click(".main-action");
        browser.says("#outcome-fault", "Choose what it did");
        assertAccessible("a form with a fault");
        weather.turns(Sky.DOWN);
        browser.script("const f = document.getElementById('fired'); f.value = '2099-01-01T10:00';"
                + " f.dispatchEvent(new Event('input', {bubbles: true}))");
        browser.click("input[value=none]");
        browser.click(".main-action");
        browser.says(".state", "not sent yet");
        assertAccessible("a test that waits");
        browser.picture("field-waiting-390");
        browser.click(".entry button[id^=undo-]");
        browser.find("#undo-reason");
        assertAccessible("a reason asked for");
        weather.turns(Sky.CLEAR);
        browser.click("#unsent button");
        browser.says(".entry", "Refused by the service");
        assertAccessible("a refused test");
        browser.picture("field-refused-390");
        browser.click("[data-state=refused] button:last-of-type");
        browser.says("#unsent", "Nothing waits to be sent");
    }

    @Test
    void everythingToPressAtTheFieldIsLargeEnough() {
        browser.width(Browser.PHONE);
        open("/field/" + joint);
        browser.find(".charge");
        browser.click("summary");
        Object small = browser.script("""
                return [...document.querySelectorAll('#unsent button, main a, main button, main input, main summary, main textarea, .masthead a')]
                  .map(e => e.closest('label') || e)
                  .map(e => [e.getBoundingClientRect(), e.outerHTML.slice(0, 80)])
                  .filter(([r]) => r.height > 0 && (r.height < 47.5 || r.width < 47.5)).map(([r, html]) => r.width + ' x ' + r.height + ' ' + html)
                """);
        assertThat((List<?>) small).isEmpty();
        Number main =
                (Number) browser.script("return document.querySelector('.main-action').getBoundingClientRect().height");
        assertThat(main.doubleValue()).isGreaterThanOrEqualTo(64);
    }

    @Test
    void nothingIsLostWithTextAtTwiceItsSize() {
        browser.width(Browser.PHONE);
        open("/field/" + joint);
        browser.find(".charge");
        browser.script("document.documentElement.style.fontSize = '200%'");
        Number beyond = (Number) browser.script("return document.documentElement.scrollWidth - innerWidth");
        assertThat(beyond.intValue()).isLessThanOrEqualTo(0);
        assertThat(browser.script("return document.querySelector('.charge .figure').getClientRects().length"))
                .as("lines that the charge takes")
                .isEqualTo(1L);
        assertThat(browser.script("const c = document.getElementById('charge'); return c.scrollWidth <= c.clientWidth"))
                .as("the charge is seen whole in its field")
                .isEqualTo(true);
        browser.picture("field-joint-large-text-390");
    }

    private void open(String path) {
        browser.go(weather.url(path));
        if (path.startsWith("/joints/")) {
            browser.find("#result svg");
        } else if (path.startsWith("/field/")) {
            browser.find(".charge");
        } else if (path.equals("/field")) {
            browser.find(".choice");
        }
    }

    private void assertAccessible(String state) {
        var found = new AxeBuilder().withTags(RULES).analyze(browser.driver());
        assertThat(found.getViolations())
                .as(state)
                .extracting(rule -> rule.getId() + " "
                        + rule.getNodes().stream()
                                .map(node -> node.getHtml() + " " + node.getAny())
                                .toList())
                .isEmpty();
    }
}
