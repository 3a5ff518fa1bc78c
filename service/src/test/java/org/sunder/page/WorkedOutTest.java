package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;

/** What a joint's pages work out where it is asked: the same numbers as the checks of the API, and each fault at its field. */
class WorkedOutTest extends OneJoint {

    @Test
    void thePinsAreHeldAgainstTheFlightAsTheCheckDoes() {
        JsonNode check = client.post(
                        "/api/checks/pins-in-flight",
                        "{\"setup\":" + Samples.SETUP
                                + ",\"flight\":{\"climb\":{\"siteElevation\":{\"value\":300,\"unit\":\"m\"},"
                                + "\"eventAltitude\":{\"value\":3300,\"unit\":\"m\"}},"
                                + "\"jerk\":{\"mass\":{\"value\":0.9,\"unit\":\"kg\"},\"deceleration\":{\"value\":20,\"unit\":\"g0\"}}}}")
                .body();
        String text = shown("/pins-in-flight?site=300&event=3000&jerkMass=0,9&jerk=20");
        assertThat(text)
                .contains(check.path("holds").asBoolean() ? "They hold" : "They do not hold well enough")
                .contains("air trapped in the compartment", "the jerk of the other event", "still pushes")
                .contains("The pins surely hold " + brief(check.path("holdingForce")))
                .contains(brief(check.path("worst")))
                .contains(check.at("/smallest/count").asString() + " pin")
                .contains("Nobody stands in line with either end", "not a charge to fire or to fly");
        assertThat(shown("/pins-in-flight"))
                .contains("3 × M2.5, setup revision 1")
                .doesNotContain("They hold", "They do");
    }

    @Test
    void whatIsWrongOfAFlightStandsAtItsField() {
        String text =
                shown("/pins-in-flight?event=abc&forwardDrag=20&jerkMass=9000&jerk=20&holes=2,5&hole=5&ascent=200");
        assertThat(fault(text, "event")).isEqualTo("Type a number, such as 300.");
        assertThat(fault(text, "aftDrag")).isEqualTo("Both drags are needed.");
        assertThat(fault(text, "holes")).isEqualTo("Type a whole number, such as 3.");
        assertThat(text).contains("value=\"abc\"", "value=\"2,5\"").doesNotContain("They hold", "They do not");
        String bounds = shown("/pins-in-flight?event=3000&jerkMass=9000&jerk=20&margin=0,5");
        assertThat(fault(bounds, "jerkMass")).isEqualTo("Allowed: 1 g to 1000 kg.");
        assertThat(fault(bounds, "margin")).isEqualTo("Allowed: 1 to 10.");
        assertThat(fault(shown("/pins-in-flight?site=300"), "event")).contains("needed");
        assertThat(fault(shown("/pins-in-flight?event=3000&holes=3"), "hole")).contains("Vent holes need");
        assertThat(fault(shown("/pins-in-flight?event=90000"), "event")).isEqualTo("Allowed: -1000 to 32000 m.");
        setup(Samples.SETUP.replaceFirst("\"aftMass\":\\{[^}]*\\},", ""));
        assertThat(fault(shown("/pins-in-flight?forwardDrag=20&aftDrag=90"), "forwardDrag"))
                .contains("state the masses of both parts");
    }

    /** The harness as the engine's formula has it: m_r·v²/x, with m_r of 0.9 and 4.1 kg 0.738 kg. */
    @Test
    void theSpeedOfTheNextChargeAndWhatTheHarnessTakesOfIt() {
        JsonNode next = client.get(joint + "/next-charge").body();
        String text = shown("/speed?stretch=250");
        String charge = next.at("/charge/value").asString() + " g";
        String speed = text.replaceAll("(?s).*About ([0-9.]+) m/s at " + Pattern.quote(charge) + ".*", "$1");
        double load = 0.738 * Math.pow(Double.parseDouble(speed), 2) / 0.25;
        String told = text.replaceAll("(?s).*to fire next</th>.*?([0-9.,]+) (k?N)</td></tr>.*", "$1 $2");
        assertThat(Double.parseDouble(told.replaceAll("[^0-9.].*", "")))
                .as(told)
                .isCloseTo(load, withinPercentage(2));
        assertThat(text).contains("never above", "2.08 g", "Nobody stands in line with either end");
        assertThat(shown("/speed")).contains("stretch not given").doesNotContain("Allowed");
        assertThat(fault(shown("/speed?stretch=x"), "stretch")).isEqualTo("Type a number, such as 300.");
        assertThat(fault(shown("/speed?stretch=0"), "stretch")).isEqualTo("Allowed: 1 mm to 100 m.");
        setup(Samples.SETUP.replaceFirst("\"aftMass\":\\{[^}]*\\},", ""));
        assertThat(shown("/speed")).contains("No speed is known").doesNotContain("m/s at");
    }

    @Test
    void aJointWithoutPinsHasNoneToCount() {
        setup(Samples.SETUP.replaceFirst("\"pins\":\\[[^]]*\\],", "").replace("\"value\":15", "\"value\":150"));
        assertThat(shown("/pins-in-flight?event=3000"))
                .contains("This joint has no pins")
                .doesNotContain("<form");
    }

    @Test
    void theDepthOfTheBayIsWorkedOutForBothSides() {
        String other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"))
                .header("Location");
        String text = shown("/depth");
        assertThat(text)
                .contains("bay pushed in is 45 mm in now", "goes into the other side, bay to booster")
                .contains(
                        "45 mm</span><small> (now)</small>",
                        "1.52 L",
                        "0.66 g",
                        "<title>Free volume against depth</title>")
                .contains("<title>Handbook charge against depth</title>", "Nobody stands in line with either end");
        JsonNode rows = client.post(
                        "/api/checks/insertion",
                        "{\"setup\":" + Samples.SETUP + ",\"from\":{\"value\":0,\"unit\":\"mm\"},"
                                + "\"to\":{\"value\":40,\"unit\":\"mm\"},\"steps\":11}")
                .body()
                .path("rows");
        String asked = shown("/depth?to=40&other=none");
        assertThat(asked).doesNotContain("goes into the other side");
        for (JsonNode row : rows) {
            assertThat(asked).contains(brief(row.path("freeVolume")));
        }
        assertThat(shown("/depth?from=100&to=200"))
                .as("deeper than the other side lets go")
                .contains("out of it");
        assertThat(read(page(other) + "/depth")).contains("goes into the other side, nose to bay");
    }

    /** 45 mm on either side now: 60 mm here leave 30 mm there. */
    @Test
    void oneDepthIsLookedAtCloselyOnBothSides() {
        String other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"))
                .header("Location");
        client.post(airframe + "/load-outs", loadOut(joint, "long motor", "520"));
        assertThat(closely("/depth")).contains("45 mm in</span><span>, as it is now", "type=\"range\"");
        String looked = closely("/depth?at=60");
        assertThat(looked).contains("60 mm in</span>", ">30 mm</dd>").doesNotContain("as it is now");
        assertThat(looked).contains(">" + charge(insertion(60)) + "</dd>", ">" + charge(insertion(30)) + "</dd>");
        // The tip is cut off at 40 mm of 620, so the cavity is 580 mm deep: 580 - 520 - 45 leave 15, and 15 mm more
        // none.
        assertThat(closely("/depth")).contains("Fits: 15 mm of length and ");
        assertThat(looked).contains("Fits: 0 mm of length and ", "Fits by its volume; no load-out says");
        client.post(airframe + "/load-outs", loadOut(joint, "longer motor", "540"));
        assertThat(closely("/depth?at=60")).contains("Does not fit: motor case end is 20 mm too long for this side.");
        assertThat(closely("/depth?at=80")).as("the nose is too narrow there").contains("Cannot be there: ");
        assertThat(closely("/depth?at=60&other=none")).doesNotContain("bay to booster</h3>");
        assertThat(closely("/depth?at=4000")).as("kept between the ends").contains("90 mm in</span>");
        assertThat(read(page(other) + "/depth?at=30")).contains("30 mm in</span>");
    }

    @Test
    void whatIsWrongOfTheDepthLookedAtStandsAtItsField() {
        assertThat(shown("/depth?at=x")).contains("Depth to look at: Type a number, such as 300.");
        assertThat(shown("/depth?at=6000&other=none")).contains("Depth to look at: Allowed: 0 to 5 m.");
    }

    /** The part of the page that the slider changes. */
    private String closely(String path) {
        return shown(path)
                .replaceAll("(?s)<section class=\"card\" aria-labelledby=\"curves\">.*", "")
                .replaceAll("\\s*\\n\\s*", "");
    }

    private JsonNode insertion(int millimetres) {
        return client.post(
                        "/api/checks/insertion",
                        "{\"setup\":" + Samples.SETUP + ",\"from\":{\"value\":" + millimetres
                                + ",\"unit\":\"mm\"},\"to\":{\"value\":" + (millimetres + 1)
                                + ",\"unit\":\"mm\"},\"steps\":2}")
                .body()
                .path("rows")
                .path(0);
    }

    private static String charge(JsonNode row) {
        var charge = row.at("/handbookCharge/value").decimalValue();
        return charge.setScale(2, RoundingMode.HALF_EVEN).toPlainString() + " g";
    }

    private static String loadOut(String joint, String name, String length) {
        return "{\"name\":\"" + name + "\",\"compartments\":[{\"jointId\":\"" + joint.replaceAll(".*/", "")
                + "\",\"items\":[{\"name\":\"motor case end\",\"kind\":\"hard\",\"length\":{\"value\":" + length
                + ",\"unit\":\"mm\"},\"diameter\":{\"value\":10,\"unit\":\"mm\"}}]}]}";
    }

    @Test
    void whatIsWrongOfADepthStandsAtItsField() {
        String text = shown("/depth?from=x&to=6000");
        assertThat(fault(text, "from")).isEqualTo("Type a number, such as 300.");
        assertThat(fault(text, "to")).isEqualTo("Allowed: 0 to 5 m.");
        assertThat(text).contains("value=\"x\"", "value=\"6000\"").doesNotContain("As a table");
        assertThat(fault(shown("/depth?from=50&to=40"), "to")).contains("more than the least depth");
        assertThat(shown("/depth?to=2000&other=none"))
                .as("past the end of the nose")
                .contains(">cannot be</td>", ">none</td>", "nose to bay: bay pushed in is 92 mm wide");
    }

    @Test
    void aJointThatNothingIsPushedInAtSaysSo() {
        setup(Samples.SETUP.replaceFirst("\\{\"name\":\"bay pushed in\".*\\}\\},", ""));
        assertThat(shown("/depth"))
                .contains("Nothing is pushed in at this joint")
                .doesNotContain("<form", "As a table");
    }

    @Test
    void theJointLeadsToBoth() {
        assertThat(shown("/plan")).contains("/pins-in-flight\"", "/depth\"");
        for (String path : new String[] {"/pins-in-flight", "/depth"}) {
            assertThat(client.get("/joints/" + UUID.randomUUID() + path, "Accept", "text/html")
                            .status())
                    .isEqualTo(404);
        }
    }

    private void setup(String described) {
        assertThat(client.put(joint + "/setup", described, "If-Match", "*").status())
                .isEqualTo(200);
    }

    /** Three digits and the unit. */
    private static String brief(JsonNode quantity) {
        return quantity.path("value")
                        .decimalValue()
                        .round(new MathContext(3, RoundingMode.HALF_EVEN))
                        .toPlainString() + " " + quantity.path("unit").asString();
    }

    private static String fault(String text, String field) {
        return text.replaceAll("(?s).*id=\"" + field + "-fault\">([^<]*)<.*", "$1");
    }

    private String shown(String path) {
        return read(page(joint) + path);
    }
}
