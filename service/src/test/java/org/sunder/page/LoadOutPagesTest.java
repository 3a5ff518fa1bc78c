package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.sunder.Samples;

/** What is installed for a flight, as its page tells it: in words, drawn, the worst first. */
class LoadOutPagesTest extends OneJoint {

    /** The nose is 580 mm deep to where its tip is cut off, and the bay takes 45 mm of that. */
    @Test
    void whatDoesNotFitSaysByHowMuchAndTheWorstComesFirst() {
        add("short case", item("motor case end", "hard", "400", "20"));
        add("long case", item("motor case end", "hard", "675", "20"));
        add("wide case", item("motor case end", "hard", "100", "94"));
        String told = told();
        assertThat(told)
                .contains("Does not fit: motor case end is 140 mm too long for this side.", "finds no room")
                .contains("Fits: 135 mm of length and ", "45 mm to 445 mm in", "The worst comes first.")
                .contains("wider than the place where it comes to lie.")
                .contains("in the setup in force", "Nobody stands in line with either end");
        assertThat(told.indexOf(">long case</a>")).isPositive().isLessThan(told.indexOf(">wide case</a>"));
        assertThat(told.indexOf(">wide case</a>")).isLessThan(told.indexOf(">short case</a>"));
    }

    @Test
    void noChargeIsNamedForWhatDoesNotFit() {
        add("long case", item("motor case end", "hard", "675", "20"));
        assertThat(told())
                .contains("No charge is worked out for what does not fit.")
                .doesNotContain("Free volume ");
    }

    @Test
    void severalThatFindNoRoomAreNamedTogether() {
        add("both", item("motor case end", "hard", "500", "20") + "," + item("tracker", "hard", "100", "20"));
        assertThat(told()).contains("Does not fit: tracker is 65 mm too long for this side.");
        add("three", item("case", "hard", "600", "20") + "," + item("tracker", "hard", "100", "20"));
        assertThat(told()).contains("case and tracker together are 165 mm too long for this side.");
    }

    @Test
    void bothCompartmentsAreDrawnToOneScale() {
        String other = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", "bay to booster"))
                .header("Location");
        String both = "{\"jointId\":\"" + id(joint) + "\",\"items\":[" + item("main", "soft", "180", "80")
                + "]},{\"jointId\":\"" + id(other) + "\",\"items\":[" + item("motor case end", "hard", "900", "20")
                + "]}";
        client.post(airframe + "/load-outs", "{\"name\":\"both\",\"compartments\":[" + both + "]}");
        String told = told();
        assertThat(told).contains("<title>both, nose to bay</title>", "<title>both, bay to booster</title>");
        assertThat(told).contains("class=\"soft\"", "class=\"hard misfit\"", "main: 45 mm to ");
        assertThat(told.indexOf("<h3>bay to booster</h3>"))
                .as("the worst first")
                .isLessThan(told.indexOf("<h3>nose to bay</h3>"));
        // 248 px wide: what is drawn runs from the joint, or from where it would have to begin, to the end of 945 mm.
        assertThat(told.split("class=\"packing\" width=\"248\" height=\"(?=60\")", -1))
                .as("44 px for the bore of 92 mm, both the same")
                .hasSize(3);
    }

    private String told() {
        return read(page(airframe) + "/load-outs");
    }

    private void add(String name, String items) {
        var made = client.post(
                airframe + "/load-outs",
                "{\"name\":\"" + name + "\",\"compartments\":[{\"jointId\":\"" + id(joint) + "\",\"items\":[" + items
                        + "]}]}");
        assertThat(made.status()).as(made.raw().body()).isEqualTo(201);
    }

    private static String item(String name, String kind, String length, String diameter) {
        return "{\"name\":\"" + name + "\",\"kind\":\"" + kind + "\",\"length\":{\"value\":" + length
                + ",\"unit\":\"mm\"},\"diameter\":{\"value\":" + diameter + ",\"unit\":\"mm\"}}";
    }

    private static String id(String address) {
        return address.replaceAll(".*/", "");
    }
}
