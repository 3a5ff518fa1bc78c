package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;

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
