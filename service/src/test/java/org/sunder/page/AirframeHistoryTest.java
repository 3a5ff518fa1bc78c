package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;

/** What happened to an airframe, as its page tells it. */
class AirframeHistoryTest extends OneJoint {

    private static final String A_BROWSER_TAKES = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

    @Test
    void whatHappenedIsCountedInALine() {
        assertThat(told()).contains("Nothing was fired yet; one setup since ");
        String spoilt = fired("0.60", "none", "2026-05-03T10:20:00+01:00");
        assertThat(told()).contains("One test counts; one setup since ");
        client.post(spoilt + "/void", "{\"reason\":\"the igniter failed\"}");
        assertThat(told()).contains("No firing counts, one firing does not; one setup since ");
        fired("0.85", "separated", "2026-05-03T11:20:00+01:00");
        fired("0.90", "separated", "2026-05-03T11:50:00+01:00");
        flown("0.90");
        changed();
        assertThat(told()).contains("Two tests and one flight count, one firing does not; two setups since ");
    }

    @Test
    void itIsToldDayByDayTheNewestFirst() {
        fired("0.60", "none", "2026-05-03T23:20:00+01:00");
        fired("0.85", "separated", "2026-05-04T00:20:00+01:00");
        fired("0.80", "partial", "2026-05-04T09:05:00+01:00");
        assertThat(of("<h3 id=\"day-\\d+\">([^<]*)</h3>"))
                .as("days by the clock of the place")
                .endsWith("4 May 2026", "3 May 2026");
        assertThat(of("<strong>(\\d[^<]*)</strong>"))
                .containsSubsequence("0.80 g: partial", "0.85 g: separated", "0.60 g: none");
        assertThat(told()).contains(">09:05</time>", ">00:20</time>", ">23:20</time>");
    }

    @Test
    void aTestTellsHowLikelyItWasAndWhatItTaught() {
        String test = fired("0.85", "separated", "2026-05-03T10:20:00+01:00");
        var body = client.get(test).body();
        long given = Math.round(100 * body.at("/forecast/separated").asDouble());
        assertThat(told())
                .contains("It had been given " + given + " in 100.")
                .contains("Correction after it ", "marks.svg#separated");
        flown("0.85");
        assertThat(told()).contains("Flight, 0.85 g: separated", "marks.svg#flight-separated");
    }

    @Test
    void whatIsVoidSaysWhyAndCanCountAgain() {
        String test = fired("0.60", "none", "2026-05-03T10:20:00+01:00");
        assertThat(told()).doesNotContain("data-test=");
        client.post(test + "/void", "{\"reason\":\"the igniter failed\"}");
        assertThat(told())
                .contains(
                        "<strong class=\"struck\">0.60 g: none</strong>", "Void: the igniter failed", "marks.svg#void")
                .contains("0.60 g: none, made void", "data-test=\"" + test.replaceAll(".*/", "") + "\"");
        client.post(test + "/unvoid", "{\"reason\":\"it burned after all\"}");
        assertThat(told())
                .contains("0.60 g: none, counted again", "it burned after all")
                .doesNotContain("data-test=", "struck");
    }

    @Test
    void aSetupSaysWhatChangedSinceTheOneBefore() {
        changed();
        String story = told();
        assertThat(story)
                .contains("3 × M2.5, fit 15 N; ogive nose, 620 mm. Handbook charge 0.66 g.")
                .contains("<s>3 × M2.5</s>", "<strong>2 × M2.5</strong>", "<q>two pins were enough</q>")
                .doesNotContain("<dt>note</dt>", "<dt>cavity</dt>");
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "*");
        assertThat(told()).contains("Nothing differs from the revision before.");
    }

    /** What is packed is read item by item: what stayed is not told again. */
    @Test
    void aChangeOfWhatIsInItNamesTheItemsThatChanged() {
        String other = Samples.SETUP
                .replace("\"value\":340", "\"value\":300")
                .replace("\"name\":\"harness\"", "\"name\":\"cord\"");
        assertThat(client.put(joint + "/setup", other, "If-Match", "*").status())
                .isEqualTo(200);
        assertThat(told())
                .contains("<dt>main parachute</dt>", "<s>340 g</s>", "<strong>300 g</strong>")
                .contains("<dt>cord</dt>", "<dt>harness</dt>", "<s>120 g</s>", "<strong>none</strong>")
                .doesNotContain("<dt>in it</dt>", "<dt>bay pushed in</dt>");
    }

    @Test
    void theNewestOfEachJointSaysWhereItStands() {
        client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"));
        fired("0.60", "none", "2026-05-03T10:20:00+01:00");
        fired("0.85", "separated", "2026-05-03T11:20:00+01:00");
        String story = told().replaceAll("(?s)<div class=\"taught\".*", "");
        assertThat(story.split("class=\"badge", -1)).as("one a joint").hasSize(3);
        assertThat(story).contains("<small>bay to booster</small>", "<small>nose to bay</small>");
    }

    @Test
    void whatItTaughtStandsBesideIt() {
        fired("0.85", "separated", "2026-05-03T10:20:00+01:00");
        assertThat(told())
                .contains("<title>The correction as it narrowed</title>", "1. 0.85 g, separated: ")
                .contains("Charge ruler, Bittern", "Nobody stands in line with either end")
                .contains("href=\"" + page(joint) + "/plan\"", "href=\"" + page(joint) + "/compare\"");
    }

    @Test
    void kindsCanBeLookedAtAlone() {
        assertThat(told()).as("one kind only").doesNotContain("type=\"checkbox\"");
        fired("0.85", "separated", "2026-05-03T10:20:00+01:00");
        assertThat(of("id=\"show-of-(\\w+)\"")).containsExactly("tests", "setups");
    }

    @Test
    void plainLinksGiveItAsATableAndAsADocument() {
        fired("0.85", "separated", "2026-05-03T10:20:00+01:00");
        assertThat(told()).contains("href=\"" + page(airframe) + "/history.csv\"", "href=\"" + airframe + "/history\"");
        var table = client.get(page(airframe) + "/history.csv", "Accept", A_BROWSER_TAKES);
        assertThat(table.status()).isEqualTo(200);
        assertThat(table.header("Content-Type")).startsWith("text/csv");
        assertThat(table.header("Content-Disposition")).contains("history.csv");
        assertThat(table.raw().body()).contains(",test-fired,nose to bay,1,ground,0.85,g,separated,");
        var document = client.get(airframe + "/history", "Accept", A_BROWSER_TAKES);
        assertThat(document.header("Content-Type")).startsWith("application/json");
        assertThat(document.body().path("entries")).hasSize(3);
    }

    @Test
    void aRocketPutAwayNamesNoCharge() {
        fired("0.85", "separated", "2026-05-03T10:20:00+01:00");
        assertThat(told()).contains("class=\"answer\"");
        client.delete(airframe, "If-Match", "*");
        assertThat(told())
                .contains("Put away.", "0.85 g: separated")
                .doesNotContain("class=\"answer\"", "class=\"ruler");
    }

    private String told() {
        return read(page(airframe));
    }

    private List<String> of(String pattern) {
        var found = Pattern.compile(pattern).matcher(told());
        List<String> all = new ArrayList<>();
        while (found.find()) {
            all.add(found.group(1));
        }
        return all;
    }

    private String fired(String grams, String outcome, String at) {
        return client.post(joint + "/ground-tests", Samples.test(grams, outcome, at))
                .header("Location");
    }

    private void flown(String grams) {
        var flown =
                client.post(joint + "/flight-events", Samples.test(grams, "separated", "2026-05-09T10:20:00+01:00"));
        assertThat(flown.status()).as(flown.raw().body()).isEqualTo(201);
    }

    private void changed() {
        String fewer = Samples.SETUP
                .replace("\"count\":3", "\"count\":2")
                .replaceFirst("}$", ",\"note\":\"two pins were enough\"}");
        assertThat(client.put(joint + "/setup", fewer, "If-Match", "*").status())
                .isEqualTo(200);
    }
}
