package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.io.ClassPathResource;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.Thorough;
import org.sunder.caution.Caution;
import org.sunder.page.Weather.Sky;

/**
 * Every page by day and by night, on a phone, a small phone and a desk: no violation of WCAG 2.2 A and AA, contrast of 7:1,
 * best practice, nothing cut off. All of them in a thorough run, which leaves pictures of each in target/screenshots to look at, but in CI;
 * else those seen most.
 */
@ServiceTest
@Tag("browser")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {

    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "wcag2aaa", "best-practice");
    private static final String AXE = axe();
    private static final List<String> MOST_SEEN =
            List.of("start", "joint", "setup", "airframe", "flight-day-worked-out", "field-joint", "card");
    private static final Path SCREENSHOTS = Path.of("target", "screenshots");
    private static final int SMALL = 320; // WCAG 2.2, 1.4.10 Reflow

    @Autowired
    Client client;

    @LocalServerPort
    int port;

    @Autowired
    EmptyLog emptyLog;

    private final Map<String, String> pages = new LinkedHashMap<>();
    private Weather weather;
    private Browser browser;
    private UUID joint;

    @BeforeAll
    void aFleet() throws IOException {
        Browser.need();
        Files.createDirectories(SCREENSHOTS);
        emptyLog.empty();
        weather = new Weather(port);
        browser = Browser.shared();
        pages.put("empty", "/");
        isAccessibleByDayAndByNightAndFitsEveryScreen("empty");
        pages.clear();
        String airframe = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Avocet"))
                .header("Location");
        String at = client.joint(airframe);
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
        String drogue = client.post(
                        airframe + "/joints",
                        Samples.JOINT.replace("nose to bay", "bay to booster").replace("main", "drogue"))
                .header("Location");
        client.post(drogue + "/ground-tests", Samples.test("1.00", "separated", "2026-05-04T10:20:00+01:00"));
        String us = client.post(
                        "/api/airframes",
                        Samples.AIRFRAME.replace("Bittern", "Curlew").replace("metric", "us"))
                .header("Location");
        String other = client.joint(us);
        pages.put("start", "/");
        pages.put("fleet", "/fleet");
        pages.put("airframe", airframe.replace("/api", ""));
        pages.put("airframe-us", us.replace("/api", ""));
        pages.put("flight-day", airframe.replace("/api", "") + "/flight-day");
        String workedOut = "/flight-day?site=1200&event-" + joint + "=200&bay=1,2&holes=4&speed=";
        pages.put("flight-day-worked-out", airframe.replace("/api", "") + workedOut + "260");
        pages.put("flight-day-fault", airframe.replace("/api", "") + workedOut + "26x");
        pages.put("summary", airframe.replace("/api", "") + "/summary");
        String file =
                Files.readString(Path.of("src", "main", "resources", "openapi", "takeInPoolSnapshot.request.json"));
        client.post("/api/pool/snapshots?givenBy=the%20club%20down%20the%20road&use=true", file);
        pages.put("phone", "/phone");
        pages.put("sign-in", "/sign-in");
        pages.put("pool", "/pool");
        pages.put("joint-pool", other.replace("/api", "") + "/pool");
        pages.put("import", "/import");
        pages.put("terms", "/terms");
        pages.put("new-airframe", "/airframes/new");
        pages.put("new-joint", airframe.replace("/api", "") + "/joints/new");
        pages.put("joint", at.replace("/api", "") + "/plan");
        pages.put("joint-without-a-test", other.replace("/api", "") + "/plan");
        pages.put("setup", at.replace("/api", ""));
        pages.put("setup-us", other.replace("/api", ""));
        pages.put("edit-airframe", airframe.replace("/api", "") + "/edit");
        String loadOut =
                client.post(airframe + "/load-outs", Samples.loadOut(joint)).header("Location");
        client.post(airframe + "/load-outs", Samples.loadOutTooLong(joint, drogue.replaceAll(".*/", "")));
        pages.put("load-outs", airframe.replace("/api", "") + "/load-outs");
        pages.put("load-out", airframe.replace("/api", "") + loadOut.replace("/api", ""));
        String pins = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\",\"lot\":\"L7\"}")
                .header("Location");
        for (String force : List.of("76.2", "79", "81.5")) {
            client.post(pins + "/pull-tests", "{\"force\":{\"value\":" + force + ",\"unit\":\"N\"}}");
        }
        pages.put("compare", at.replace("/api", "") + "/compare");
        pages.put("copy", at.replace("/api", "") + "/copy");
        pages.put("pins-in-flight", at.replace("/api", "") + "/pins-in-flight");
        pages.put(
                "pins-in-flight-worked-out",
                at.replace("/api", "") + "/pins-in-flight?event=3000&jerkMass=0.9&jerk=20&forwardDrag=20&aftDrag=30x");
        pages.put("speed", at.replace("/api", "") + "/speed?stretch=300");
        pages.put("depth", at.replace("/api", "") + "/depth");
        pages.put("remove", other.replace("/api", "") + "/remove");
        String away = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Dunlin"))
                .header("Location");
        client.delete(away, "If-Match", "*");
        pages.put("put-away", "/airframes/put-away");
        pages.put("airframe-put-away", away.replace("/api", ""));
        pages.put("stock", "/stock");
        pages.put("stored", other.replace("/api", "") + "/plan?stored");
        pages.put("nowhere", "/nowhere");
        pages.put("problem", "/problems/invalid-input");
        pages.put("pins", pins.replace("/api/pin-batches", "/stock/pins"));
        pages.put("new-powder", "/stock/powders/new");
        pages.put("field-joint", "/field/" + joint);
        pages.put("field", "/field");
        pages.put("card", at + "/ladder");
        pages.put("not-there", "/airframes/" + UUID.randomUUID());
    }

    @BeforeEach
    void byDay() {
        browser.prefer("prefers-color-scheme", "light");
    }

    @AfterAll
    void away() throws IOException {
        if (weather != null) {
            if (Thorough.on()) {
                ContactSheet.write(SCREENSHOTS);
            }
            weather.close();
            emptyLog.empty();
        }
    }

    /** One visit a page; all rules once, those of contrast again by night, where each tint has another value. */
    @ParameterizedTest
    @MethodSource("names")
    void isAccessibleByDayAndByNightAndFitsEveryScreen(String name) {
        browser.prefer("prefers-color-scheme", "light");
        browser.width(Browser.PHONE);
        open(pages.get(name));
        assertAccessible(name + ", by day");
        if (Thorough.on()) {
            browser.picture(name + "-390");
        }
        browser.width(SMALL);
        Number beyond = (Number) browser.script("return document.documentElement.scrollWidth - innerWidth");
        assertThat(beyond.intValue()).as(name + " scrolls sideways").isLessThanOrEqualTo(0);
        if (Thorough.on()) {
            browser.width(Browser.DESK);
            browser.picture(name + "-1280");
        }
        browser.prefer("prefers-color-scheme", "dark");
        assertContrast(name + ", by night");
        if (Thorough.on()) {
            browser.picture(name + "-dark-1280");
            browser.width(Browser.PHONE);
            browser.picture(name + "-dark-390");
        }
        assertThat(browser.blocked()).isEmpty();
    }

    List<String> names() {
        return pages.keySet().stream()
                .filter(name -> Thorough.on() || MOST_SEEN.contains(name))
                .toList();
    }

    /** A4 and Letter, in inches. */
    @InThoroughRuns
    @ParameterizedTest
    @CsvSource({
        "card,8.27,11.69",
        "card,8.5,11",
        "flight-day,8.27,11.69",
        "flight-day,8.5,11",
        "flight-day-worked-out,8.27,11.69",
        "flight-day-worked-out,8.5,11",
        "summary,8.27,11.69",
        "summary,8.5,11"
    })
    void printsOnOnePage(String name, double width, double height) throws IOException {
        browser.width(Browser.PHONE);
        open(pages.get(name));
        byte[] pdf = browser.printed(width, height);
        Files.write(SCREENSHOTS.resolve(name + (height > 11 ? "-a4" : "-letter") + ".pdf"), pdf);
        assertThat(sheets(pdf)).isEqualTo(1);
    }

    /** Three places where a rocket parts are as many as are common. */
    @InThoroughRuns
    @ParameterizedTest
    @CsvSource({"a4,8.27,11.69", "letter,8.5,11"})
    void aSummaryOfThreeJointsPrintsOnOnePage(String paper, double width, double height) throws IOException {
        String airframe = client.post("/api/airframes", Samples.AIRFRAME.replace("Bittern", "Dunlin"))
                .header("Location");
        for (String name : List.of("nose to bay", "bay to booster", "booster to fin can")) {
            String at = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", name))
                    .header("Location");
            client.post(at + "/ground-tests", Samples.test("0.75", "none"));
            client.post(at + "/ground-tests", Samples.test("1.00", "separated"));
        }
        open(airframe.replace("/api", "") + "/summary");
        byte[] pdf = browser.printed(width, height);
        client.delete(airframe, "If-Match", "*");
        Files.write(SCREENSHOTS.resolve("summary-of-three-" + paper + ".pdf"), pdf);
        assertThat(sheets(pdf)).isEqualTo(1);
    }

    /** What can only be pressed is no use on paper. */
    @Test
    @InThoroughRuns
    void nothingToPressIsPrinted() {
        browser.width(Browser.DESK);
        for (String name : List.of("joint", "airframe", "load-outs", "start")) {
            open(pages.get(name));
            browser.medium("print");
            try {
                assertThat(browser.script("return [...document.querySelectorAll('main button, main a.button, .tabs a')]"
                                + ".filter(e => e.checkVisibility() && !e.classList.contains('term'))"
                                + ".map(e => e.textContent.trim()).join(', ')"))
                        .as(name)
                        .isEqualTo("");
            } finally {
                browser.medium("");
            }
        }
    }

    @Test
    @InThoroughRuns
    void theHistoryOfAnAirframePrints() throws IOException {
        open(pages.get("airframe"));
        byte[] pdf = browser.printed(8.27, 11.69);
        Files.write(SCREENSHOTS.resolve("airframe-a4.pdf"), pdf);
        assertThat(sheets(pdf)).isBetween(2L, 6L);
    }

    /** On a screen they are a tap away, on paper all of them stand there. */
    @InThoroughRuns
    @ParameterizedTest
    @ValueSource(strings = {"airframe", "joint", "load-outs", "start", "flight-day", "summary"})
    void everyCautionIsReadOnPaper(String name) {
        browser.width(Browser.DESK);
        open(pages.get(name));
        assertThat(cautionsSeen()).isZero();
        browser.medium("print");
        try {
            assertThat(cautionsSeen()).isEqualTo(Caution.values().length);
            browser.picture(name + "-print-1280");
        } finally {
            browser.medium("");
        }
    }

    private long cautionsSeen() {
        return (long) browser.script(
                "return [...document.querySelectorAll('.caution-line li')].filter(e => e.checkVisibility()).length");
    }

    /** Page objects of a document, as ISO 32000-1, 7.7.3.3, names them. */
    private static long sheets(byte[] pdf) {
        return Pattern.compile("/Type\\s*/Page\\b(?!s)")
                .matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }

    @InThoroughRuns
    @ParameterizedTest
    @ValueSource(strings = {"field-joint", "airframe", "flight-day"})
    void showsItsMarksAndWhatIsPressedInForcedColours(String name) {
        browser.width(Browser.PHONE);
        browser.prefer("forced-colors", "active");
        open(pages.get(name));
        browser.picture(name + "-forced-390");
        Object unseen = browser.script("""
                if (!matchMedia('(forced-colors: active)').matches) return ['forced colours are not on'];
                const ground = getComputedStyle(document.body).backgroundColor;
                const seen = (c) => c !== ground && c !== 'rgba(0, 0, 0, 0)';
                const faults = [...document.querySelectorAll('.mark, figure svg')].filter((e) => !seen(getComputedStyle(e).color)).map((e) => e.outerHTML);
                for (const e of document.querySelectorAll('main button:not(.term), main .button, .outcome, main input:not([type=radio], [type=checkbox])')) {
                  const style = getComputedStyle(e);
                  if (e.offsetParent && !(seen(style.borderTopColor) && parseFloat(style.borderTopWidth) > 0)) faults.push(e.outerHTML);
                }
                for (const e of document.querySelectorAll('.term')) if (getComputedStyle(e).textDecorationLine !== 'underline') faults.push(e.outerHTML);
                const first = [...document.querySelectorAll('main a, main button, main summary')].find((e) => e.offsetParent && !e.closest('details:not([open]) form'));
                first.focus({ focusVisible: true });
                const ring = getComputedStyle(first);
                if (ring.outlineStyle === 'none' || parseFloat(ring.outlineWidth) < 2 || !seen(ring.outlineColor)) faults.push('no ring: ' + ring.outline);
                return faults;
                """);
        assertThat((List<?>) unseen).isEmpty();
    }

    @Test
    void nothingMovesWhereMotionIsUnwelcome() {
        browser.prefer("prefers-reduced-motion", "reduce");
        open(pages.get("field-joint"));
        Object moving = browser.script("""
                return [...document.querySelectorAll('*')].filter((e) => /[1-9]/.test(getComputedStyle(e).transitionDuration + getComputedStyle(e).animationDuration)).map((e) => e.outerHTML.slice(0, 80))
                """);
        assertThat((List<?>) moving).isEmpty();
    }

    @Test
    @InThoroughRuns
    void everyStateOfTheFieldPageIsAccessible() {
        browser.width(Browser.PHONE);
        open("/field/" + joint);
        browser.find(".charge");
        browser.click("#report summary");
        browser.script("document.getElementById('film-reading').hidden = false");
        assertAccessible("a film that is read");
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
        browser.sendWhatWaits();
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
        browser.click("#report summary");
        Object small = browser.script("""
                return [...document.querySelectorAll('#unsent button, main a, main button:not(.term), main input, main summary, main textarea, .masthead a')]
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
    @InThoroughRuns
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
        if (path.contains("/plan")) {
            browser.find(".answer");
        } else if (path.matches("/joints/[^/]+")) {
            browser.find("#result svg");
        } else if (path.startsWith("/field/")) {
            browser.find(".charge");
        } else if (path.equals("/field")) {
            browser.find(".choice");
        } else if (path.matches(".*(/new|/edit|/load-outs/.+|/stock/.+)")) {
            browser.find("form");
        }
    }

    private void assertAccessible(String state) {
        assertNothingFound(state, Map.of("type", "tag", "values", RULES));
    }

    private void assertContrast(String state) {
        assertNothingFound(
                state, Map.of("type", "rule", "values", List.of("color-contrast", "color-contrast-enhanced")));
    }

    @Test
    void aFaultOnAPageIsFound() {
        open(pages.get("stock"));
        browser.script("""
                const image = document.createElement('img');
                image.src = '/assets/none';
                const pale = document.createElement('p');
                pale.textContent = 'pale';
                pale.style.color = '#999';
                pale.style.background = '#fff';
                document.querySelector('main').append(image, pale);
                """);
        assertThatThrownBy(() -> assertAccessible("a fault")).hasMessageContaining("image-alt");
        assertThatThrownBy(() -> assertContrast("a fault"))
                .hasMessageContaining("pale")
                .message()
                .doesNotContain("image-alt");
    }

    /** Runs in the page itself: none of ours has frames, and a tab of its own for every look costs more than the look. */
    private void assertNothingFound(String state, Map<String, Object> rules) {
        if (Boolean.FALSE.equals(browser.script("return 'axe' in window"))) {
            browser.script(AXE);
        }
        Object found = browser.later("""
                const [rules, done] = arguments;
                const told = (rule) => rule.id + rule.nodes.map((n) => ' ' + n.html + ' ' + n.any.map((check) => check.message));
                axe.run(document, { runOnly: rules, resultTypes: ['violations'] })
                  .then((found) => done(found.violations.map(told)), (failure) => done([String(failure)]));
                """, rules);
        assertThat((List<?>) found).as(state).isEmpty();
    }

    private static String axe() {
        try {
            return new ClassPathResource("axe.min.js").getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
