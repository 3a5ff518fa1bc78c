package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;
import org.sunder.caution.Caution;
import tools.jackson.databind.JsonNode;

/** What the range safety officer gets to read and to sign. */
class SummaryTest extends OneJoint {

    @Test
    void aJointWithNoTestSaysThatItIsNotToBeFlown() {
        assertThat(summary())
                .contains("No flight charge: not to be flown yet.", "Nothing has been fired at this joint.")
                .contains("Parts the airframe for the main.", "3 × M2.5", "a handbook strength")
                .contains("0.9 kg ahead of it, 4.1 kg behind it", "98.00 mm", "1.52 L", "300 kPa", "2.08 g")
                .contains("Setup revision 1, in force since")
                .doesNotContain("Backup, later", "the model gives");
    }

    @Test
    void aTestedJointNamesBothChargesAndWhatTheyRestOn() {
        fire("1.00", "separated", 1);
        fire("0.90", "separated", 2);
        String spoilt = fire("0.60", "none", 3);
        client.post(spoilt + "/void", "{\"reason\":\"the igniter failed\"}");
        fire("0.70", "partial", 4);
        var charge = client.get(joint + "/flight-charge").body();
        assertThat(summary())
                .contains("4 firings logged, 1 not counted. Of those that count, 2 separated it, 1 parted it in part,"
                        + " 0 did not part it. None broke anything.")
                .contains(">" + hundredths(charge.at("/primary/value")) + " g</dd>")
                .contains(">" + hundredths(charge.at("/backup/value")) + " g</dd>")
                .contains("With no model, by the tests at that charge or less alone", "with 95 % confidence")
                .doesNotContain("No flight charge");
    }

    @Test
    void whatIsNotStatedIsSaidSo() {
        String bare = client.post("/api/airframes", "{\"name\":\"Teal\",\"units\":\"us\"}")
                .header("Location");
        assertThat(summary(bare))
                .contains("This rocket has no joint yet", "Outer diameter <strong>not stated</strong>");
        client.post(
                bare + "/joints",
                Samples.JOINT
                        .replace("\"event\":\"main\"", "\"event\":\"other\"")
                        .replaceAll("\"forwardMass\".*\\s*\"ceiling\":\\{\"gaugePressure\".*", "")
                        .replaceAll("\\s*\"measure\"", "\"measure\""));
        assertThat(summary(bare))
                .contains("for what is not stated", "not stated ahead of it, not stated behind it")
                .contains("none given: three times the threshold pressure", "lbf");
    }

    @Test
    void cautionsStandWithTheChargesAndThereIsRoomToSign() {
        String summary = summary();
        for (Caution caution : Caution.values()) {
            assertThat(summary).contains(caution.text());
        }
        assertThat(summary)
                .contains(
                        "Owner's name",
                        "Range safety officer",
                        "The officer's notes",
                        "(times are UTC) from the setups and tests");
        assertThat(summary.split("class=\"blank\"", -1))
                .as("name, signature and date of two")
                .hasSize(7);
    }

    @Test
    void theRocketAndItsFlightDayLeadThere() {
        String link = "href=\"" + page(airframe) + "/summary\"";
        assertThat(read(page(airframe))).contains(link);
        assertThat(read(page(airframe) + "/flight-day")).contains(link);
        assertThat(client.get("/airframes/" + UUID.randomUUID() + "/summary", "Accept", "text/html")
                        .status())
                .isEqualTo(404);
    }

    @Test
    void aRocketPutAwayNamesNoCharge() {
        fire("1.00", "separated", 1);
        assertThat(summary()).contains("nose to bay");
        client.delete(airframe, "If-Match", "*");
        assertThat(summary()).contains("This rocket is put away").doesNotContain("nose to bay", "Never above");
    }

    /** With the digits of the measure. */
    private static String hundredths(JsonNode grams) {
        return new BigDecimal(grams.asString()).setScale(2).toPlainString();
    }

    private String fire(String grams, String outcome, int day) {
        return client.post(joint + "/ground-tests", Samples.test(grams, outcome, "2026-05-0" + day + "T10:20:00+01:00"))
                .header("Location");
    }

    private String summary() {
        return summary(airframe);
    }

    private String summary(String of) {
        return read(page(of) + "/summary");
    }
}
