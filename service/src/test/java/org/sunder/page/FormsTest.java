package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.sunder.page.Labels.field;
import static org.sunder.page.Labels.id;
import static org.sunder.page.Labels.pick;
import static org.sunder.page.Labels.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;

/** What a flyer describes and changes on the pages: airframes, setups, load-outs, pins, powders, flight days. */
class FormsTest extends AtAJoint {

    @Test
    void changesAnAirframeAndPutsItAway() {
        phone.go(weather.url(page(airframe)));
        phone.click("a[href$='/edit']");
        field(phone, "Name", "");
        phone.click(".main-action");
        phone.says(".fault", "a name is needed");
        assertThat(phone.text(".fault")).as("what is missing is said once").doesNotContain("allowed");
        field(phone, "Name", "Bittern II");
        phone.click(".main-action");
        phone.says("h1", "Bittern II");
        phone.click("a[href$='/edit']");
        phone.find("form");
        press(phone, "Put this airframe away");
        press(phone, "Yes, put this airframe away");
        phone.says("h1", "How much powder parts your rocket?");
        assertThat(client.get(airframe).body().path("archivedAt").isMissingNode())
                .isFalse();
        phone.go(weather.url(page(airframe)));
        phone.says("main", "Put away.");
        assertThat(phone.all("a[href$='/edit']")).isEmpty();
    }

    @Test
    @InThoroughRuns
    void refusesAChangeOfWhatWasChangedElsewhereAndKeepsWhatWasTyped() {
        phone.go(weather.url(page(airframe) + "/edit"));
        field(phone, "Name", "Sora");
        client.put(airframe, Samples.AIRFRAME.replace("Bittern", "Knot"), "If-Match", "\"v0\"");
        phone.click(".main-action");
        phone.says(".fault-list", "changed elsewhere");
        assertThat(phone.value("#" + id(phone, "Name"))).isEqualTo("Sora");
        assertThat(client.get(airframe).body().path("name").asString()).isEqualTo("Knot");
    }

    @Test
    @InThoroughRuns
    void takesInAnExportFromAFileAndSaysWhatIsWrongWithOne() throws IOException {
        String export = client.get("/api/export").raw().body();
        phone.go(weather.url("/import"));
        press(phone, "Take it in");
        phone.says("#file-fault", "choose a file first");
        choose("broken.json", export.replace("\"event\":\"main\"", "\"event\":\"never\""));
        press(phone, "Take it in");
        phone.says("#file-fault", "nothing was taken in");
        phone.says(".fault-list", "/joints/0/event");
        choose("sunder.json", export);
        press(phone, "Take it in");
        phone.says("#said", "Nothing was new.");
        choose(
                "other.json",
                export.replace(airframe.replaceAll(".*/", ""), UUID.randomUUID().toString()));
        press(phone, "Take it in");
        phone.says(".fault-list", "is here already with other content");
    }

    private void choose(String name, String text) throws IOException {
        Path file = Path.of("target", name).toAbsolutePath();
        Files.writeString(file, text);
        phone.find("#file").sendKeys(file.toString());
    }

    @Test
    @InThoroughRuns
    void aPullIsStoredOnceHoweverOftenItIsPressedOnASlowLine() {
        var batch = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}");
        phone.go(weather.url("/stock/pins/" + batch.id()));
        weather.turns(Weather.Sky.IN_FLIGHT);
        field(phone, "Force at which it broke", "76");
        for (int press = 0; press < 2; press++) {
            press(phone, "Add this pull");
            int presses = press + 1;
            phone.until("press " + presses, d -> weather.posted() == presses ? true : null);
            phone.says("#pulls .fault-list", "goes on");
        }
        weather.turns(Weather.Sky.CLEAR);
        press(phone, "Add this pull");
        phone.says("#pulled + p", "One pin pulled");
        assertThat(client.get(batch.header("Location")).body().path("pullTests").size())
                .isEqualTo(1);
    }

    @Test
    @InThoroughRuns
    void aBatchKnowsItsStrengthAfterTwoPullsAndASetupCanNameIt() {
        phone.go(weather.url("/stock"));
        phone.click("a[href='/stock/pins/new']");
        field(phone, "Name", "white nylon");
        pick(phone, "Thread", "M2.5");
        phone.click(".main-action");
        phone.says("#pulled + p", "No pin pulled yet");
        pull("76", "One pin pulled");
        // By hand: the mean of 76 and 80 is 78, their sample standard deviation 4/√2 = 2.83.
        pull("80", "78.0 ± 2.83 N, from 2 pulled pins");
        phone.go(weather.url(page(joint)));
        phone.until(
                "the batch offered",
                d -> phone.script(
                        "return [...document.querySelectorAll('option')].some(o => o.textContent === 'white nylon, 78 N each') || null"));
        Object batch = phone.script(
                "return [...document.querySelectorAll('option')].find(o => o.textContent.startsWith('white nylon')).value");
        pick(phone, "Strength of one", String.valueOf(batch));
        // Three pins of 78 N and 15 N of fit hold 249 N.
        phone.says("#result", "249 N");
        phone.click("#setup .main-action");
        phone.find("#answer");
        assertThat(client.get(joint).body().at("/setup/pins/0/measured/tests").asInt())
                .isEqualTo(2);
    }

    @Test
    @InThoroughRuns
    void describesALoadOutSaysWhetherItFitsAndRemovesIt() {
        phone.go(weather.url(page(airframe)));
        phone.click("a[href$='/load-outs']");
        phone.says("main", "None yet.");
        phone.click("a[href$='/load-outs/new']");
        field(phone, "Name", "big main");
        phone.until(
                "what the setup has in it",
                d -> phone.script(
                        "return [...document.querySelectorAll('input')].some(i => i.value === 'main parachute') || null"));
        press(phone, "Take out");
        field(phone, "What it is", "main parachute");
        field(phone, "Length as packed", "180");
        field(phone, "Diameter as packed", "80");
        phone.click(".main-action");
        phone.says(".entry", "Fits");
        phone.says(".entry", "in the setup in force");
        phone.click("h2 a");
        field(phone, "Length as packed", "900");
        phone.click(".main-action");
        phone.says(".entry", "Does not fit");
        phone.click("h2 a");
        phone.find("form");
        press(phone, "Remove this load-out");
        press(phone, "Yes, remove this load-out");
        phone.says("main", "None yet.");
    }

    @Test
    @InThoroughRuns
    void looksAtOneKindOfWhatHappenedAlone() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "separated"));
        phone.go(weather.url(page(airframe)));
        assertThat(seen("li.of-tests")).isEqualTo(1L);
        phone.click("#show-of-tests");
        assertThat(seen("li.of-tests")).isEqualTo(0L);
        assertThat(seen("h3[id^=day-]"))
                .as("days on which something else happened")
                .isEqualTo(1L);
        assertThat(seen("li.of-setups")).isEqualTo(1L);
        phone.click("#show-of-setups");
        assertThat(seen("li.of-setups")).isEqualTo(0L);
        phone.says(".story", "Nothing is chosen above.");
        phone.click("#show-of-tests");
        assertThat(seen("li.of-tests")).isEqualTo(1L);
    }

    /** How many elements are drawn. */
    private Object seen(String selector) {
        return phone.script(
                "return [...document.querySelectorAll('" + selector + "')].filter(e => e.offsetParent).length");
    }

    @Test
    @InThoroughRuns
    void aSliderPicksTheDepthOfTheBay() throws IOException {
        phone.go(weather.url(page(joint) + "/depth"));
        slide(60);
        phone.says("#at-number", "60 mm");
        phone.says("#at-depth", "60 mm in");
        assertThat((String) phone.script("return location.search"))
                .as("the address leads there again")
                .contains("at=60");
        weather.turns(Weather.Sky.DOWN);
        slide(70);
        phone.says("#at-fault", "The service cannot be reached");
        weather.turns(Weather.Sky.CLEAR);
        slide(50);
        phone.says("#at-depth", "50 mm in");
    }

    private void slide(int millimetres) {
        phone.find("#at");
        phone.script("const at = document.getElementById('at'); at.value = " + millimetres
                + "; at.dispatchEvent(new Event('input', { bubbles: true }))");
    }

    @Test
    @InThoroughRuns
    void entersAPowderThatSetupsMayName() {
        phone.go(weather.url("/stock"));
        phone.click("a[href='/stock/powders/new']");
        field(phone, "Name", "tin 3");
        field(phone, "Powder force", "200");
        field(phone, "How uncertain that is, as a fraction", "7");
        phone.click(".main-action");
        phone.says(".fault", "0.001 to 0.5");
        field(phone, "How uncertain that is, as a fraction", "0,08");
        phone.click(".main-action");
        phone.says("main", "Powder force 200 kJ/kg ± 8 %");
        phone.go(weather.url(page(joint)));
        phone.until(
                "the powder offered",
                d -> phone.script(
                        "return [...document.querySelectorAll('option')].some(o => o.value === 'tin 3') || null"));
    }

    /** A unit may be typed with the number, whatever unit the field shows. */
    @Test
    void describesARocketWithAtMostFifteenEntriesAndIsLedToItsSecondJoint() {
        List<String> entries = new ArrayList<>();
        phone.go(weather.url("/airframes/new"));
        enter(entries, "Name", "Tern");
        phone.click(".main-action");
        enter(entries, "Name of the joint", "nose to bay");
        enter(entries, "Inner diameter at the joint", "3 5/8 in");
        enter(entries, "Inner length", "62cm");
        phone.click("[data-shape=haack-series]");
        entries.add("profile: von Kármán");
        enter(entries, "How many", "3");
        press(phone, "Add an item");
        entries.add("another item");
        pick(phone, "Kind", "intrusion");
        entries.add("kind: bay");
        field(phone, "How far it comes in", "150");
        phone.says("#result", "cannot be pushed in that far");
        phone.says(".field .fault", "cannot be pushed in that far");
        enter(entries, "How far it comes in", "25");
        press(phone, "Add an item");
        entries.add("another item");
        enter(entries, "Mass", "12 oz");
        // By hand: 3 5/8 in are 92.075 mm, so 66.58 cm².
        phone.says("#result", "66.6 cm²");
        assertThat(phone.script("return [...document.querySelectorAll('.row .mind')].map(m => m.textContent).join()"))
                .as("what to mind of the pins, at the pins")
                .isEqualTo("The strength of the pins is a handbook value. Pull tests of the batch replace it.");
        assertThat(phone.text("#result")).as("and not again").doesNotContain("is a handbook value");
        phone.click("#setup .main-action");
        phone.says("#answer", "Fire ");
        assertThat(entries).as("entries to a first suggestion").hasSizeLessThanOrEqualTo(15);
        phone.says(".stored", "nose to bay is stored.");
        phone.click(".stored .main");
        phone.says("h1", "a new joint");
        JsonNode tern = client.get("/api/airframes").body().path("items").path(0);
        JsonNode setup = client.get("/api/airframes/" + tern.path("id").asString() + "/joints")
                .body()
                .at("/items/0/setup");
        assertThat(setup.at("/innerDiameter").toString()).isEqualTo("{\"value\":3.625,\"unit\":\"in\"}");
        assertThat(setup.at("/cavity/0/length").toString()).isEqualTo("{\"value\":62,\"unit\":\"cm\"}");
        assertThat(setup.at("/cavity/0/profile/parameter").asInt(-1)).isZero();
        assertThat(setup.at("/contents/1/name").asString()).isEqualTo("parachute");
        phone.until(
                "the diameter used last is offered",
                d -> phone.script(
                        "return [...document.querySelectorAll('datalist option')].some(o => o.value === '3.625 in') || null"));
    }

    private void enter(List<String> entries, String label, String value) {
        field(phone, label, value);
        entries.add(label + ": " + value);
    }

    @Test
    @InThoroughRuns
    void aHalfTypedSetupSurvivesAnEmptyBatteryUntilItIsStoredOrDropped() {
        phone = Browser.open(profile.resolve("phone"));
        String form = weather.url(page(airframe) + "/joints/new");
        phone.go(form);
        field(phone, "Name of the joint", "bay to booster");
        field(phone, "Inner diameter at the joint", "9");
        press(phone, "Add an item");
        field(phone, "What it is", "drogue");
        field(phone, "Mass", "1,");
        phone.until(
                "it is kept",
                d -> Boolean.TRUE.equals(phone.later("""
                        const [name, done] = arguments;
                        import('/assets/store.js').then(({ get }) => get('drafts', name)).then(d => done(JSON.stringify(d || '').includes('"1,"')));
                        """, "setup-new-" + airframe.replaceAll(".*/", "")))
                        ? true
                        : null);
        phone.kill();
        phone = Browser.open(profile.resolve("phone"));
        phone.go(form);
        phone.says("#half-typed", "not stored yet");
        assertThat(phone.value("#" + id(phone, "Name of the joint"))).isEqualTo("bay to booster");
        assertThat(phone.value("#" + id(phone, "Inner diameter at the joint"))).isEqualTo("9");
        assertThat(phone.value("#" + id(phone, "What it is"))).isEqualTo("drogue");
        assertThat(phone.value("#" + id(phone, "Mass"))).isEqualTo("1,");
        press(phone, "Drop it");
        phone.until("no notice", d -> phone.all("#half-typed").isEmpty() ? true : null);
        assertThat(phone.value("#" + id(phone, "Name of the joint"))).isEmpty();
    }

    @Test
    @InThoroughRuns
    void theFlightDayTakesAltitudesAndWorksOutVents() {
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        phone.go(weather.url(page(airframe) + "/flight-day"));
        phone.click("summary");
        phone.type("#site", "1200");
        phone.type("input[name^=event-]", "200");
        phone.type("#bay", "1,2");
        phone.type("#holes", "4");
        phone.type("#speed", "fast");
        press(phone, "Put it on the sheet");
        phone.says("#speed-fault", "Type a number");
        assertThat(phone.value("#bay")).isEqualTo("1,2");
        phone.type("#speed", "260");
        press(phone, "Put it on the sheet");
        phone.says(".flight", "200 m above the ground");
        phone.says(".flight", "A closed compartment still holds");
        phone.says(".written", "1200 m above the sea");
        // By hand: the rule gives 31.67 mm² a 1.639 L, so 23.19 mm² for 1.2 L, four holes of 2.717 mm: a #36 drill
        // (0.1065 in).
        phone.says(".vents", "4 holes of 2.72 mm each");
        phone.says(".vents", "#36");
    }

    @Test
    @InThoroughRuns
    void aPullFarFromTheOthersIsLeftOutAndTakenBackBesideIt() {
        String batch = client.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}")
                .header("Location");
        for (String force : List.of("76", "80", "780")) {
            client.post(batch + "/pull-tests", "{\"force\":{\"value\":" + force + ",\"unit\":\"N\"}}");
        }
        phone.go(weather.url(batch.replace("/api/pin-batches", "/stock/pins")));
        phone.says("[data-pull='3']", "far from the others");
        press(phone, "Leave pull 3 out");
        phone.says("[data-pull='3'] s", "780 N");
        phone.says("[data-pull='3']", "left out");
        phone.says("#pulled + p", "78.0 ± 2.83 N, from 2 pulled pins, 1 left out");
        press(phone, "Leave pull 1 out");
        phone.says("[data-pull='1'] .fault", "At least 2 pulls must count");
        press(phone, "Count pull 3 again");
        phone.says("#pulled + p", "from 3 pulled pins.");
        press(phone, "Delete pull 3");
        press(phone, "Keep it");
        press(phone, "Delete pull 3");
        press(phone, "Yes, delete pull 3");
        phone.says("#pulled + p", "78.0 ± 2.83 N, from 2 pulled pins.");
        assertThat(phone.all("[data-pull]")).hasSize(2);
    }

    @Test
    @InThoroughRuns
    void aCommaIsAPointInEveryForm() {
        phone.go(weather.url(page(airframe) + "/edit"));
        field(phone, "Outer diameter", "98,4");
        phone.click(".main-action");
        goneFrom(page(airframe) + "/edit");
        assertThat(client.get(airframe).body().at("/outerDiameter/value").asString(""))
                .isEqualTo("98.4");
        phone.go(weather.url(page(joint)));
        field(phone, "Pull that parts the joint without pins", "15,5");
        // By hand: three pins of 205.6 N and 15.5 N make 632 N.
        phone.says("#result", "632 N");
        phone.says("#result", "0.66 g ±");
        phone.says("#result", "2.08 g");
        phone.click(".main-action");
        goneFrom(page(joint));
        assertThat(client.get(joint).body().at("/setup/fitForce/value").asString(""))
                .isEqualTo("15.5");
        phone.go(weather.url("/stock/powders/new"));
        field(phone, "Name", "tin " + System.nanoTime());
        field(phone, "Powder force", "219,5");
        phone.click(".main-action");
        goneFrom("/stock/powders/new");
        assertThat(client.get("/api/powders")
                        .body()
                        .at("/items/0/powderForce/value")
                        .asString(""))
                .isEqualTo("219.5");
    }

    /** What is half typed is looked at beside other setups, and is not stored by it. */
    @Test
    @InThoroughRuns
    void aChangeAsItIsTypedStandsBesideTheSetupInForce() {
        phone.go(weather.url(page(joint)));
        field(phone, "How many", "4");
        phone.says("#beside", "This change beside other setups");
        phone.click("#beside");
        phone.says("#compared", "Tried, not stored");
        phone.says("#compared", "4 × M2.5");
        assertThat(phone.all(".on-scale")).hasSize(2);
        assertThat(client.get(joint).body().path("setupRevision").asInt()).isEqualTo(1);
        phone.go(weather.url(page(joint)));
        phone.find("#half-typed");
        field(phone, "How many", "99");
        phone.says("#setup .fault", "1 to 48");
        phone.go(weather.url(page(joint) + "/compare?with=tried"));
        phone.says("#tried-fault", "The change cannot be as it is typed");
    }

    private void goneFrom(String path) {
        phone.until("gone from " + path, d -> d.getCurrentUrl().endsWith(path) ? null : true);
    }

    private void pull(String newtons, String strength) {
        field(phone, "Force at which it broke", newtons);
        press(phone, "Add this pull");
        phone.says("#pulled + p", strength);
    }
}
