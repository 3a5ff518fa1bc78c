package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.WindowType;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.page.Weather.Sky;
import tools.jackson.databind.JsonNode;

/**
 * Logging at the field, in a real browser, with and without a network: every test reaches the log once. What a phone meets
 * seldom is tried in thorough runs.
 */
class FieldPageTest extends AtAJoint {

    private static final String SENT = "Stored by the service";
    private static final String WAITS = "Saved on this phone, not sent yet";

    private UUID jointId;

    @BeforeEach
    void itsId() {
        jointId = UUID.fromString(joint.replaceAll(".*/", ""));
    }

    @Test
    void logsATestAndNamesTheNextChargeAtOnce() {
        openJoint();
        String first = phone.value("#charge");
        assertThat(phone.text(".charge")).isEqualTo(first + " g");
        assertThat(advised()).isEqualTo(Double.parseDouble(first));
        assertThat(phone.text(".cautions")).contains("Nobody stands in line with either end");
        log("separated");
        phone.says(".state", SENT);
        awaitCharge(advised());
        assertThat(advised()).isLessThan(Double.parseDouble(first));
        assertThat(tests()).hasSize(1);
        // With the digits shown, such as 0.80 and not 0.8.
        assertThat(log().raw().body()).contains("\"charge\":{\"value\":" + first + ",");
        assertThat(tests().get(0).path("setupRevision").asInt()).isEqualTo(1);
    }

    /** On a phone of 390 × 844, once the cautions of the day were read; whoever has read them has them one tap away. */
    @Test
    void theFirstViewHoldsNumberRulerCautionAndOutcomesAndSavingIsTwoTaps() {
        openJoint();
        assertThat(phone.all(".caution-line")).isEmpty();
        phone.click("#cautions-read");
        phone.says(".caution-line summary", "nobody in line with either end");
        Object outside = phone.script("""
                scrollTo(0, 0);
                if (innerWidth !== 390 || innerHeight !== 844) return ['the window is ' + innerWidth + ' x ' + innerHeight];
                return ['.charge', '.ruler-kept svg', '.caution-line', '.outcome:has([value=none])', '.outcome:has([value=separated])']
                  .filter((css) => { const r = document.querySelector(css).getBoundingClientRect(); return r.top < 0 || r.bottom > innerHeight || r.height === 0; });
                """);
        assertThat((List<?>) outside).isEmpty();
        phone.click(".caution-line summary");
        phone.says(".cautions", "Everyone near wears eye and ear protection.");
        phone.click(".caution-line summary");
        phone.script("scrollTo(0, 0)");
        phone.script("document.querySelector('input[value=none]').click()");
        Object seen = phone.script("""
                const r = document.querySelector('.main-action').getBoundingClientRect();
                return scrollY === 0 && r.bottom <= innerHeight && document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2).closest('.main-action') !== null;
                """);
        assertThat(seen).as("the second tap is in view").isEqualTo(true);
        phone.click(".main-action");
        phone.says(".state", SENT);
        phone.says(".saved", "Saved on this phone · sent");
        assertThat(
                        (Boolean)
                                phone.script(
                                        "const r = document.querySelector('.saved').getBoundingClientRect(); return r.top >= 0 && r.bottom < innerHeight / 2"))
                .as("the line and its undo are in view")
                .isTrue();
        phone.click(".saved button");
        phone.click(".undo .actions button");
        phone.says(".state", "Taken back");
        assertThat(phone.all(".saved")).isEmpty();
        phone.go(weather.url("/field/" + jointId));
        phone.find(".charge");
        assertThat(phone.all("#cautions-read")).as("asked once a day").isEmpty();
    }

    /** What names a charge is not shown any more where more is known, and nothing is where somebody else may be signed in. */
    @Test
    void historyFlightSheetAndCardOpenWithoutNetworkFromWhatThePhoneKeeps() {
        client.post(joint + "/ground-tests", Samples.test("0.95", "separated"));
        String history = page(airframe);
        String sheet = history + "/flight-day";
        String card = joint + "/ladder";
        phone.go(weather.url("/field"));
        phone.says("#ready", "History, flight sheet and cards of one rocket open too");
        weather.turns(Sky.DOWN);
        for (String path : List.of(history, sheet, card)) {
            phone.go(weather.url(path));
            phone.says(".kept", "Kept on this phone: ");
            phone.says("h1", "Bittern");
            assertThat(phone.script("return location.pathname")).isEqualTo(path);
        }
        phone.go(weather.url(sheet + "?site=1200"));
        phone.says("#instead", "what you asked for is not kept on this phone");
        phone.go(weather.url("/stock"));
        phone.says("#instead", "what you asked for is not kept on this phone");
        phone.go(weather.url("/field/" + jointId));
        log("none");
        phone.says(".state", WAITS);
        for (String path : List.of(sheet, card)) {
            phone.go(weather.url(path));
            phone.says("#instead", "it would name a charge that may not hold any more");
        }
        phone.go(weather.url(history));
        phone.says(".kept", "nor is what was saved on this phone since");
        weather.turns(Sky.CLEAR);
        phone.go(weather.url("/field"));
        phone.says("#unsent", "Nothing waits to be sent");
        phone.says("#ready", "History, flight sheet and cards of one rocket open too");
        weather.turns(Sky.DOWN);
        phone.go(weather.url(sheet));
        phone.says(".kept", "Kept on this phone: ");
        weather.turns(Sky.CLEAR);
        phone.go(weather.url("/field"));
        phone.says("#ready", "open too");
        phone.later("""
                const done = arguments[0];
                const keeps = async () => {
                  const { all } = await import('/assets/store.js');
                  return (await caches.keys()).some(name => name.endsWith('-pages')) || (await all('joints')).length > 0;
                };
                (async () => {
                  await fetch('/sign-out', { method: 'POST' });
                  while (await keeps()) await new Promise(r => setTimeout(r, 50));
                  done(true);
                })();
                """);
        weather.turns(Sky.DOWN);
        phone.go(weather.url(history));
        phone.says("#instead", "what you asked for is not kept on this phone");
        phone.says("#joints", "this phone knows no joint yet");
    }

    @Test
    @InThoroughRuns
    void takesThreeTapsFromTheListOfJoints() {
        phone.go(weather.url("/field"));
        phone.click("a[href='/field/" + jointId + "']");
        phone.click("input[value=partial]");
        phone.click(".main-action");
        phone.says(".state", SENT);
        assertThat(tests().get(0).path("outcome").asString()).isEqualTo("partial");
    }

    @Test
    @InThoroughRuns
    void takesAChargeWithACommaInStepsOfTheMeasureAndTheRestOfTheReport() {
        openJoint();
        phone.type("#charge", "0,8");
        phone.click("[aria-label='One step more']");
        phone.click("[aria-label='One step less']");
        phone.click("[aria-label='One step less']");
        assertThat(phone.value("#charge")).isEqualTo("0.75");
        phone.click("input[value=separated]");
        phone.click("#damaged");
        phone.click("#report summary");
        phone.type("#distance", "300");
        phone.type("#frames", "6");
        phone.type("#rate", "240");
        assertThat(phone.value("#speed")).isEqualTo("12");
        assertThat(phone.value("#uncertainty"))
                .as("5 % of the length and 0.41 of 6 frames")
                .isEqualTo("8.5");
        phone.type("#landed", "6");
        phone.type("#height", "1.2");
        assertThat(phone.value("#speed"))
                .as("6 m in the 0.4947 s of a fall from 1.2 m")
                .isEqualTo("12.1");
        phone.type("#notes", "harness burnt");
        phone.click(".main-action");
        phone.says(".state", SENT);
        JsonNode test = tests().get(0);
        assertThat(test.path("damaged").asBoolean()).isTrue();
        // The film: 0.3 m in 6 of 240 frames a second is 12 m/s. Where it landed came last, and says 12.1.
        assertThat(test.path("speed").path("value").asDouble()).isEqualTo(12.1);
        assertThat(test.path("speedUncertaintyPercent").asDouble()).isEqualTo(10.4);
        assertThat(test.path("notes").asString()).isEqualTo("harness burnt");
    }

    @Test
    void worksThroughThePlanWithoutNetworkAndSendsEverythingOnce() {
        openJoint();
        awaitPlanAndWorker();
        weather.turns(Sky.DOWN);
        log("none");
        phone.says(".state", WAITS);
        phone.says("#unsent", "1 test is not sent yet");
        phone.says(".why", "From the plan stored on this phone");
        String planned = phone.text(".charge");
        log("separated");
        phone.says("#unsent", "2 tests are not sent yet");
        assertThat(tests()).isEmpty();
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says("#unsent", "Nothing waits to be sent");
        assertThat(tests()).hasSize(2);
        // Newest first: the charge fired second is the one that the plan named.
        assertThat(tests().get(0).path("charge").path("value").asDouble() + " g")
                .isEqualTo(Double.parseDouble(planned.replace(" g", "")) + " g");
    }

    @Test
    @InThoroughRuns
    void survivesAnEmptyBatteryWithoutNetworkAndStoresExactlyOneTest() {
        phone = Browser.open(profile.resolve("phone"));
        openJoint();
        awaitPlanAndWorker();
        weather.turns(Sky.DOWN);
        log("partial");
        phone.says(".state", WAITS);
        phone.kill();
        phone = Browser.open(profile.resolve("phone"));
        phone.go(weather.url("/field/" + jointId));
        phone.says("#unsent", "1 test is not sent yet");
        phone.says(".why", "From the plan stored on this phone");
        weather.turns(Sky.CLEAR);
        phone.says("#unsent", "Nothing waits to be sent");
        phone.go(weather.url("/field/" + jointId));
        phone.says(".state", SENT);
        assertThat(tests()).hasSize(1);
    }

    @InThoroughRuns
    @ParameterizedTest
    @EnumSource(names = {"ANSWERS_LOST", "DOUBLED", "PORTAL"})
    void storesATestOnceWhateverTheNetworkDoes(Sky sky) {
        openJoint();
        weather.turns(sky);
        log("separated");
        if (sky == Sky.DOUBLED) {
            phone.says(".state", SENT);
        } else {
            phone.says("#unsent", "cannot be reached");
            phone.says(".state", WAITS);
        }
        weather.turns(Sky.CLEAR);
        phone.says(".state", SENT);
        assertThat(tests()).hasSize(1);
    }

    @Test
    @InThoroughRuns
    void twoPhonesLogToTheSameJoint() {
        openJoint();
        awaitPlanAndWorker();
        weather.turns(Sky.DOWN);
        log("none");
        // Another origin shares nothing with the first: no store, no worker, no outbox.
        String here = phone.driver().getWindowHandle();
        phone.driver().switchTo().newWindow(WindowType.TAB);
        phone.go("http://127.0.0.1:" + port + "/field/" + jointId);
        phone.find(".charge");
        log("separated");
        phone.says(".state", SENT);
        phone.driver().close();
        phone.driver().switchTo().window(here);
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".state", SENT);
        awaitCharge(advised());
        assertThat(tests()).hasSize(2);
    }

    @Test
    @InThoroughRuns
    void keepsARefusedTestWithTheReasonAndSendsTheOthers() {
        openJoint();
        String first = phone.value("#charge");
        weather.turns(Sky.DOWN);
        phone.script("const f = document.getElementById('fired'); f.value = '2099-01-01T10:00';"
                + " f.dispatchEvent(new Event('input', {bubbles: true}))");
        log("none");
        phone.says("#unsent", "1 test is not sent yet");
        phone.type("#charge", "0.95");
        log("separated");
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says("[data-state=refused]", "Time of firing: it lies in the future by the clock of the service.");
        phone.says("[data-state=stored]", SENT);
        phone.says("#unsent", "of these refused: 1");
        phone.says("#next", "correct or drop it");
        assertThat(tests()).hasSize(1);
        phone.click("[data-state=refused] button");
        assertThat(phone.value("#charge")).isEqualTo(first);
        phone.script("const f = document.getElementById('fired'); f.value = '2026-05-03T10:00';"
                + " f.dispatchEvent(new Event('input', {bubbles: true}))");
        phone.click(".main-action");
        phone.says("#unsent", "Nothing waits to be sent");
        assertThat(tests()).hasSize(2);
    }

    @Test
    @InThoroughRuns
    void warnsOfAChargeAboveTheStoredCeilingWithoutNetworkTooAndTakesWhatWasFired() {
        openJoint();
        weather.turns(Sky.DOWN);
        phone.type("#charge", "2,1");
        phone.says("#charge-caution", "above the ceiling of 2.08 g");
        log("none");
        phone.says(".state", WAITS);
        phone.says("#next", "The stored plan ends here");
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".state", SENT);
        assertThat(tests().get(0).path("beyond").get(0).asString()).isEqualTo("ceiling");
    }

    @Test
    @InThoroughRuns
    void keepsAnOutcomeTappedBeforeTheAdviceHasComeAndSavesItWhenItComes() {
        phone.go(weather.url("/field"));
        phone.says("#ready", "ready without network"); // what is still on its way would bring the advice back
        weather.turns(Sky.HOLDING);
        phone.script(
                "const store = '/assets/store.js'; return import(store).then(({ change }) => change('joints', arguments[0],"
                        + " j => ({ ...j, advice: null, tree: null })))",
                jointId.toString());
        phone.go(weather.url("/field/" + jointId));
        log("partial");
        phone.says("#form-fault", "Saved as soon as the planned charge is here");
        weather.turns(Sky.CLEAR);
        phone.says(".state", SENT);
        assertThat(tests().get(0).path("outcome").asString()).isEqualTo("partial");
        assertThat(phone.text("#charge-fault")).isEmpty();
    }

    @Test
    void saysWhenItIsReadyWithoutNetworkAndAsksForNothingAgainThatStands() {
        phone.go(weather.url("/field"));
        phone.says("#ready", "ready without network");
        phone.says("#joints", "fire 0.85 g next");
        phone.says("#list-cautions", "nobody in line with either end");
        int asked = weather.asked("/api/field-kit");
        assertThat(asked).isEqualTo(2);
        assertThat(weather.asked("/api/airframes")).isZero();
        phone.go(weather.url("/field"));
        phone.says("#ready", "ready without network");
        assertThat(weather.asked("/api/field-kit")).isEqualTo(4);
        assertThat(weather.answered(304, "/api/field-kit")).isEqualTo(2);
    }

    @Test
    @InThoroughRuns
    void showsWhatOtherPhonesLogged() {
        client.post("/api/joints/" + jointId + "/ground-tests", Samples.test("0.80", "none"));
        openJoint();
        phone.says(".other", "0.80 g none");
    }

    @Test
    @InThoroughRuns
    void aDamagingTestAndAnUnplannedChargeEndTheStoredPlan() {
        openJoint();
        awaitPlanAndWorker();
        weather.turns(Sky.DOWN);
        String first = phone.text(".charge");
        phone.click("[aria-label='One step less']");
        log("none");
        phone.says("#next", "The stored plan ends here");
        assertThat(phone.all(".charge")).isEmpty();
        undoNewest();
        phone.says(".charge", first);
        phone.click("#damaged");
        log("separated");
        phone.says("#next", "Fire nothing more here until this test is sent");
        assertThat(phone.all(".charge")).isEmpty();
    }

    @Test
    @InThoroughRuns
    void namesNothingBeyondTheStoredPlan() {
        openJoint();
        awaitPlanAndWorker();
        weather.turns(Sky.DOWN);
        List<String> outcomes = deepestWay();
        assertThat(outcomes).hasSizeGreaterThan(1);
        for (int i = 0; i < outcomes.size(); i++) {
            assertThat(phone.text("#next h2")).isEqualTo("Fire next on the ground");
            log(outcomes.get(i));
            int logged = i + 1;
            phone.until("entry " + logged, d -> phone.all(".entry").size() == logged ? true : null);
        }
        assertThat(phone.text("#next h2")).isEqualTo("The stored plan ends here");
        assertThat(phone.all(".charge")).isEmpty();
    }

    @Test
    @InThoroughRuns
    void logsAFlightOnceWithoutNetworkTooAndNamesNoChargeAfterItUntilItIsSent() {
        phone.go(weather.url("/field/" + jointId + "#flight"));
        phone.says("#report-title", "What did it do in flight?");
        awaitPlanAndWorker();
        assertThat(phone.value("#charge")).as("no charge to fly is known yet").isEmpty();
        weather.turns(Sky.DOWN);
        phone.type("#charge", "1,15");
        log("separated");
        phone.says(".state", WAITS);
        phone.says(".entry", "flown with 1.15 g");
        phone.says("#next", "What comes next is known when it is sent");
        assertThat(phone.all(".charge")).isEmpty();
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".state", SENT);
        assertThat(tests()).isEmpty();
        JsonNode flights =
                client.get("/api/joints/" + jointId + "/flight-events").body().path("items");
        assertThat(flights.size()).isEqualTo(1);
        assertThat(flights.get(0).path("occasion").asString()).isEqualTo("flight");
        phone.says("#report-title", "What did it do?");
    }

    @Test
    void takesASlipBackByAVoidWithItsReason() {
        openJoint();
        String first = phone.text(".charge");
        log("none");
        phone.says(".state", SENT);
        undoNewest();
        phone.says(".state", "Taken back: entered by mistake");
        phone.says(".charge", first);
        assertThat(tests()).hasSize(1);
        assertThat(tests().get(0).path("counted").asBoolean()).isFalse();
        assertThat(tests().get(0).path("marks").get(0).path("reason").asString())
                .isEqualTo("entered by mistake");
    }

    @Test
    @InThoroughRuns
    void takesBackATestThatAnotherPhoneLogged() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "none"));
        openJoint();
        String after = phone.text(".charge");
        weather.turns(Sky.DOWN);
        phone.click(".other button[id^=undo-]");
        phone.type("#undo-reason", "the igniter failed");
        phone.click(".undo button");
        phone.says(".other .state", "Taking it back is saved on this phone, not sent yet");
        phone.says("#unsent", "1 test is not sent yet");
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".other .state", "Void: the igniter failed");
        assertThat(phone.all(".other button")).isEmpty();
        assertThat(tests().get(0).path("marks").get(0).path("reason").asString())
                .isEqualTo("the igniter failed");
        phone.says("#unsent", "Nothing waits to be sent");
        phone.until(
                "the charge of a joint with no test", d -> phone.text(".charge").equals(after) ? null : true);
    }

    @Test
    @InThoroughRuns
    void saysWhatHeldThePowder() {
        openJoint();
        phone.click("#report summary");
        phone.script("const f = document.getElementById('containment'); f.value = 'vial';"
                + " f.dispatchEvent(new Event('input', {bubbles: true}))");
        log("none");
        phone.says(".state", SENT);
        assertThat(tests().get(0).path("containment").asString()).isEqualTo("vial");
    }

    @Test
    @InThoroughRuns
    void voidsASlipWhoseAnswerWasLost() {
        openJoint();
        weather.turns(Sky.ANSWERS_LOST);
        log("none");
        phone.says("#unsent", "cannot be reached");
        undoNewest();
        weather.turns(Sky.CLEAR);
        phone.says(".state", "Taken back");
        assertThat(tests()).hasSize(1);
        assertThat(tests().get(0).path("counted").asBoolean()).isFalse();
    }

    @Test
    @InThoroughRuns
    void namesTheBackupWithWhatIsNotProvedOfIt() {
        String[][] fired = {{"0.85", "separated"}, {"0.65", "none"}, {"0.95", "separated"}, {"0.95", "separated"}};
        for (int i = 0; i < fired.length; i++) {
            client.post(
                    joint + "/ground-tests",
                    Samples.test(fired[i][0], fired[i][1], "2026-05-03T1" + i + ":20:00+01:00"));
        }
        openJoint();
        phone.says("#next", "Enough is known to fly");
        phone.says("#next", "Backup charge: 1.45 g. Not fired before: 1.53 times the highest charge fired");
    }

    @Test
    @InThoroughRuns
    void saysWhatWouldDoInTheWordsOfTheAnswer() {
        client.put(
                joint + "/setup",
                Samples.SETUP.replace("\"value\":300,\"unit\":\"kPa\"", "\"value\":200,\"unit\":\"kPa\""),
                "If-Match",
                "*");
        var next = client.get(joint + "/next-charge").body();
        for (int i = 0; i < 6 && next.path("decision").asString().equals("fire"); i++) {
            String grams = next.path("charge").path("value").asString();
            next = client.post(joint + "/ground-tests", Samples.test(grams, "none"))
                    .body()
                    .path("next");
        }
        phone.go(weather.url("/field/" + jointId));
        assertThat(next.path("options")).isNotEmpty();
        for (var option : next.path("options")) {
            phone.says("#next", option.path("text").asString());
        }
    }

    @Test
    @InThoroughRuns
    void keepsAHalfTypedForm() {
        phone = Browser.open(profile.resolve("phone"));
        openJoint();
        phone.type("#charge", "0.95");
        phone.click("input[value=partial]");
        phone.click("#report summary");
        phone.type("#notes", "one pin held");
        awaitDraft("one pin held");
        phone.kill();
        phone = Browser.open(profile.resolve("phone"));
        openJoint();
        assertThat(phone.value("#charge")).isEqualTo("0.95");
        assertThat(phone.find("input[value=partial]").isSelected()).isTrue();
        assertThat(phone.value("#notes")).isEqualTo("one pin held");
    }

    @Test
    @InThoroughRuns
    void saysWhatPlainHttpCannotDoAndDoesTheRest() {
        phone.go(weather.plainUrl("/field/" + jointId));
        phone.find(".charge");
        assertThat(phone.script("return isSecureContext")).isEqualTo(false);
        phone.says("#plain", "without network this page cannot be opened again");
        weather.turns(Sky.DOWN);
        log("separated");
        phone.says(".state", WAITS);
        weather.turns(Sky.CLEAR);
        phone.says(".state", SENT);
        assertThat(tests()).hasSize(1);
    }

    @Test
    @InThoroughRuns
    void waitsForASignInAndSendsThen() {
        openJoint();
        weather.turns(Sky.SIGNED_OUT);
        log("separated");
        phone.says("#unsent", "Sign in again");
        phone.says(".state", WAITS);
        weather.turns(Sky.CLEAR);
        phone.sendWhatWaits();
        phone.says(".state", SENT);
        assertThat(tests()).hasSize(1);
    }

    /** By the browser's lock on the machine itself, by a lease in the store over plain http, where there is no such lock. */
    @InThoroughRuns
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void oneTabSendsAtATime(boolean secure) {
        String path = "/field/" + jointId;
        String address = secure ? weather.url(path) : weather.plainUrl(path);
        phone.go(address);
        phone.find(".charge");
        assertThat(phone.script("return Boolean(navigator.locks)")).isEqualTo(secure);
        weather.turns(Sky.DOWN);
        log("none");
        phone.says(".state", WAITS);
        weather.turns(Sky.CLEAR);
        phone.driver().switchTo().newWindow(WindowType.TAB);
        phone.go(address);
        phone.driver().switchTo().newWindow(WindowType.TAB);
        phone.go(address);
        phone.says(".state", SENT);
        phone.says("#unsent", "Nothing waits to be sent");
        assertThat(tests()).hasSize(1);
        assertThat(weather.posted()).isEqualTo(1);
    }

    @Test
    @InThoroughRuns
    void fitsThroughANarrowLine() {
        phone.go(weather.url("/field/" + jointId));
        phone.find(".charge");
        @SuppressWarnings("unchecked")
        List<String> sizes = (List<String>)
                phone.script("return performance.getEntriesByType('resource').filter(e => !e.name.includes('/api/'))"
                        + ".map(e => e.encodedBodySize + ' ' + e.name)");
        long total = sizes.stream()
                .mapToLong(size -> Long.parseLong(size.split(" ", 2)[0]))
                .sum();
        assertThat(total).as(sizes.toString()).isBetween(1_000L, 120_000L);
        assertThat(sizes).allMatch(size -> size.contains("http://127.0.0.1:"));
    }

    /** Outcomes along which the kept plan goes on firing, up to its last charge and one beyond. */
    @SuppressWarnings("unchecked")
    private List<String> deepestWay() {
        return (List<String>) phone.later("""
                const [id, done] = arguments;
                const way = (step) => {
                  if (!step || step.decision !== 'fire') return null;
                  if (!step.then.length) return ['none'];
                  const ways = step.then.map((b) => [b.outcome, way(b.step)]).filter(([, w]) => w);
                  ways.sort((a, b) => b[1].length - a[1].length);
                  return ways.length ? [ways[0][0], ...ways[0][1]] : null;
                };
                import('/assets/store.js').then(({ get }) => get('joints', id)).then((jointId) => done(way(jointId.tree.first)));
                """, jointId.toString());
    }

    private double advised() {
        return client.get("/api/joints/" + jointId + "/next-charge")
                .body()
                .path("charge")
                .path("value")
                .asDouble();
    }

    private void awaitCharge(double charge) {
        phone.until(
                "the charge " + charge, d -> Double.parseDouble(phone.text(".charge .figure")) == charge ? true : null);
    }

    private void openJoint() {
        phone.go(weather.url("/field/" + jointId));
        phone.find(".charge");
    }

    private void log(String outcome) {
        phone.click("input[value=" + outcome + "]");
        phone.click(".main-action");
    }

    private void undoNewest() {
        phone.click(".entry button[id^=undo-]");
        phone.click(".undo button");
    }

    /** The tree is kept and the page can be opened without network. */
    private void awaitPlanAndWorker() {
        Object ready = phone.later("""
                const [id, done] = arguments;
                (async () => {
                  const registered = await navigator.serviceWorker.ready;
                  while (!registered.active || registered.active.state !== 'activated') await new Promise(r => setTimeout(r, 50));
                  const { get } = await import('/assets/store.js');
                  while (!((await get('joints', id)) || {}).tree) await new Promise(r => setTimeout(r, 50));
                  done('ready');
                })().catch(e => done(String(e)));
                """, jointId.toString());
        assertThat(ready).isEqualTo("ready");
    }

    private void awaitDraft(String notes) {
        phone.until(
                "a draft kept", d -> Boolean.TRUE.equals(phone.later("""
                        const [id, notes, done] = arguments;
                        import('/assets/store.js').then(({ get }) => get('drafts', id)).then(d => done(Boolean(d && d.notes === notes)));
                        """, jointId.toString(), notes)) ? true : null);
    }

    private List<JsonNode> tests() {
        return log().body().path("items").valueStream().toList();
    }

    private Client.Answer log() {
        return client.get("/api/joints/" + jointId + "/ground-tests");
    }
}
