package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;

/** Setups side by side. */
class CompareTest extends OneJoint {

    private String other;

    @BeforeEach
    void itsTwoSetupsAndAnotherJoint() {
        client.post(joint + "/ground-tests", Samples.test("1.05", "separated"));
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "*");
        other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "spare"))
                .header("Location");
    }

    @Test
    void theSetupInForceStandsBesideTheOneBeforeAndDifferencesAreMarked() {
        String page = compared("");
        assertThat(page).contains("Setup in force", "Revision 1", "not in force", "2 × M2.5", "3 × M2.5", "(differs)");
        assertThat(page.split("class=\"on-scale\"", -1)).hasSize(3);
        assertThat(cell(page, "3 × M2.5")).contains("differs");
        assertThat(cell(page, "2 × M2.5")).doesNotContain("differs");
        assertThat(page).contains("Nobody stands in line with either end");
    }

    /** The setup in force reads here as on the joint's own page. */
    @Test
    void anotherJointCanBeAddedUpToFour() {
        String with = "?with=" + id(joint) + "@2&with=" + id(other) + "@1&with=" + id(joint) + "@1";
        String page = compared(with);
        assertThat(page.split("class=\"on-scale\"", -1)).hasSize(4);
        assertThat(page).contains("spare");
        String plan = read(page(joint) + "/plan");
        String headline = plan.replaceAll("(?s).*id=\"answer\"[^>]*>([^<]*)<.*", "$1");
        assertThat(page).contains(headline);
        assertThat(compared(with + "&with=a&with=b")).contains("more than four were chosen");
        assertThat(compared("?with=" + id(joint) + "@99")).contains("Setup in force");
    }

    /** What an answer names as ways on stands there worked out, as its own setups would be, and is not stored. */
    @Test
    void waysOnThatAnAnswerNamesStandBesideTheSetupInForce() {
        String weak = client.post(
                        airframe + "/joints",
                        Samples.JOINT.replace("\"value\":300,\"unit\":\"kPa\"", "\"value\":200,\"unit\":\"kPa\""))
                .header("Location");
        JsonNode next = client.get(weak + "/next-charge").body();
        for (int i = 0; i < 6 && next.path("decision").asString().equals("fire"); i++) {
            next = client.post(
                            weak + "/ground-tests",
                            Samples.test(next.path("charge").path("value").asString(), "none"))
                    .body()
                    .path("next");
        }
        assertThat(next.path("decision").asString()).isEqualTo("change-setup");
        JsonNode options = client.get(weak + "/next-charge").body().path("options");
        assertThat(options.size()).isBetween(1, 3);
        String before = client.get("/api/export").raw().body();
        String page = read(page(weak) + "/compare");
        assertThat(page.split("class=\"on-scale\"", -1)).hasSize(2 + options.size());
        for (JsonNode option : options) {
            String text = option.path("text").asString();
            assertThat(page).containsIgnoringCase(text.split("[:.]", -1)[0]);
            assertThat(row(page, "handbook charge")).contains(near(option.path("handbookCharge")));
            assertThat(row(page, "ceiling"))
                    .contains(option.at("/ceiling/value").asString().substring(0, 4));
            String one =
                    read(page(weak) + "/compare?with=" + option.path("kind").asString());
            assertThat(one.split("class=\"on-scale\"", -1)).hasSize(2);
            assertThat(one).contains("A way on, not stored");
        }
        assertThat(client.get("/api/export").raw().body()).isEqualTo(before);
        assertThat(read(page(weak) + "/plan")).contains("These beside the setup in force");
        assertThat(compared("")).as("where a charge will do").doesNotContain("A way on");
    }

    @Test
    void aTriedChangeIsAColumnAndNothingIsStored() {
        String before = client.get("/api/export").raw().body();
        String four = Samples.SETUP.replace("\"count\":3", "\"count\":4");
        String part = tried(four, "\"" + id(joint) + "@2\",\"tried\",\"" + id(other) + "@1\"");
        assertThat(part).contains("id=\"compared\"", "Setup in force", "Tried, not stored", "4 × M2.5", "spare");
        assertThat(part.split("class=\"on-scale\"", -1)).hasSize(4);
        assertThat(cell(part, "4 × M2.5")).contains("differs");
        String alone = client.post(page(joint) + "/tried-change", "{\"setup\":" + four + "}")
                .raw()
                .body();
        String headline = alone.replaceAll("(?s).*class=\"answer\">([^<]*)<.*", "$1");
        assertThat(part).contains(headline);
        assertThat(tried(four, "\"nothing\""))
                .as("what is not there is passed over")
                .contains("Tried, not stored");
        assertThat(client.get("/api/export").raw().body()).isEqualTo(before);
        assertThat(compared("?with=tried")).doesNotContain("Tried, not stored");
    }

    @Test
    void whatCannotBeComparedIsNamedAtItsField() {
        String impossible = Samples.SETUP.replace("\"value\":620", "\"value\":20");
        var refused = client.post(page(joint) + "/compare", "{\"setup\":" + impossible + ",\"with\":[\"tried\"]}");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body().path("errors")).isNotEmpty();
        assertThat(client.post(page(joint) + "/compare", "{}").status()).isEqualTo(400);
        var nothing = client.post(page(joint) + "/compare", "{\"setup\":" + Samples.SETUP + ",\"with\":[null]}");
        assertThat(nothing.status()).isEqualTo(400);
        assertThat(nothing.body().at("/errors/0/pointer").asString()).isEqualTo("/with/0");
        assertThat(client.post(
                                "/joints/01890000-0000-7000-8000-000000000000/compare",
                                "{\"setup\":" + Samples.SETUP + "}")
                        .status())
                .isEqualTo(404);
    }

    private String tried(String setup, String with) {
        var answer = client.post(page(joint) + "/compare", "{\"setup\":" + setup + ",\"with\":[" + with + "]}");
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.raw().body();
    }

    private static String row(String page, String label) {
        int at = page.indexOf(">" + label + "<");
        return page.substring(at, page.indexOf("</tr>", at));
    }

    /** In steps of 0.05 g a charge is read to a hundredth of a gram. */
    private static String near(JsonNode charge) {
        return new BigDecimal(charge.path("value").asString()).setScale(2, RoundingMode.HALF_EVEN) + " g";
    }

    private static String cell(String page, String text) {
        int at = page.lastIndexOf(">" + text + "<");
        return page.substring(page.lastIndexOf("<td", at), at);
    }

    private static String id(String address) {
        return address.replaceAll(".*/", "");
    }

    private String compared(String query) {
        return read(page(joint) + "/compare" + query);
    }
}
