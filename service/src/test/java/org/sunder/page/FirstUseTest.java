package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.support.ui.Select;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.EmptyLog;
import org.sunder.InThoroughRuns;
import org.sunder.ServiceTest;

/** The first use from an empty start to the first test logged, tap by tap and key by key, as service/docs/first-suggestion.md has it. */
@ServiceTest
@Tag("browser")
class FirstUseTest {

    // Operators of the keystroke-level model in seconds, Card, Moran & Newell, Communications of the ACM 23 (1980),
    // 396-410.
    private static final double K = 0.28; // a key or a press, by an average typist who is no secretary
    private static final double P = 1.1; // pointing at something
    private static final double H = 0.4; // the hand from keys to pointer or back
    private static final double M = 1.35; // preparing a step in the mind

    /** A step: what is pressed, and the keys typed after it. */
    private record Step(String page, String what, int taps, int keys) {

        double seconds() {
            return M + taps * (P + K) + (keys == 0 ? 0 : 2 * H + keys * K);
        }
    }

    @Autowired
    EmptyLog emptyLog;

    @LocalServerPort
    int port;

    private final List<Step> steps = new ArrayList<>();
    private Browser browser;
    private String page = "";

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @Test
    @InThoroughRuns
    void isWrittenDownAsItIsCounted() throws IOException {
        emptyLog.empty();
        try (Weather weather = new Weather(port)) {
            browser = Browser.shared();
            browser.go(weather.url("/"));
            toTheFirstSuggestion();
            int first = steps.size();
            toTheFirstTest();
            String doc = Files.readString(Path.of("docs", "first-suggestion.md"));
            for (int i = 0; i < steps.size(); i++) {
                Step step = steps.get(i);
                assertThat(doc)
                        .contains("| " + (i + 1) + " | " + step.page() + " | " + step.what() + " | " + step.taps()
                                + " | " + (step.keys() == 0 ? "" : step.keys()) + " |");
            }
            assertThat(doc).contains(sum("To the first suggestion", steps.subList(0, first)));
            assertThat(doc).contains(sum("To the next charge after the first test", steps));
        } finally {
            emptyLog.empty();
        }
    }

    private void toTheFirstSuggestion() {
        page = "empty start";
        tap("Add your rocket", ".welcome a.main");
        page = "Add a rocket";
        type("name: Tern", "Name", "Tern");
        tap("store it", ".main-action");
        page = "Describe its first joint";
        type("the joint's name: nose to bay", "Name of the joint", "nose to bay");
        type("inner diameter: 3 5/8 in", "Inner diameter at the joint", "3 5/8 in");
        type("inner length: 62cm", "Inner length", "62cm");
        tap("profile: von Kármán", "[data-shape=haack-series]");
        type("how many pins: 3", "How many", "3");
        add("another item");
        choose("kind: pushed-in bay", "Kind", "intrusion");
        type("how far it comes in: 25", "How far it comes in", "25");
        add("another item: a parachute");
        type("its mass: 12 oz", "Mass", "12 oz");
        browser.says("#result", "66.6 cm²");
        tap("store the joint", "#setup .main-action");
        browser.says("#answer", "Fire ");
    }

    private void toTheFirstTest() {
        page = "the joint";
        tap("to the field", "[aria-labelledby=answer] .button.main");
        page = "At the field";
        tap("cautions read", "#cautions-read");
        browser.find(".caution-line");
        tap("separated", ".outcome:has([value=separated])");
        tap("save", ".main-action");
        browser.says(".saved", "Saved on this phone · sent");
        browser.find(".charge");
    }

    private void tap(String what, String css) {
        browser.click(css);
        steps.add(new Step(page, what, 1, 0));
    }

    private void add(String what) {
        Labels.press(browser, "Add an item");
        steps.add(new Step(page, what, 1, 0));
    }

    private void type(String what, String label, String text) {
        String css = "#" + Labels.id(browser, label);
        browser.click(css);
        browser.type(css, text);
        steps.add(new Step(page, what, 1, text.length()));
    }

    /** One tap opens the list, another takes a word of it. */
    private void choose(String what, String label, String value) {
        new Select(browser.find("#" + Labels.id(browser, label))).selectByValue(value);
        steps.add(new Step(page, what, 2, 0));
    }

    private static String sum(String to, List<Step> steps) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %.0f s |",
                to,
                steps.size(),
                steps.stream().mapToInt(Step::taps).sum(),
                steps.stream().mapToInt(Step::keys).sum(),
                steps.stream().mapToDouble(Step::seconds).sum());
    }
}
