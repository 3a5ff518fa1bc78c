package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.Samples;

/** What a further test buys, on the page of its joint. */
class OutlookTest extends OneJoint {

    @Test
    void chancesAreToldUntilAFurtherTestAddsNothing() {
        assertThat(Outlook.done(List.of(0.0, 0.85, 0.97, 0.97)))
                .isEqualTo("Done after one more test: 85 in 100; after two tests: 97 in 100");
        assertThat(Outlook.done(List.of(0.0, 0.0, 0.004, 0.31))).isEqualTo("Done after three more tests: 31 in 100");
        assertThat(Outlook.done(List.of(0.0, 0.0, 0.0, 0.0))).isEqualTo("Most likely not done within three more tests");
    }

    /** The same that the ladder of the card says. */
    @Test
    void theJointSaysWhatTestingBuysAndWhatToPackUntilItIsDone() {
        client.post(joint + "/ground-tests", Samples.test("0.75", "partial"));
        var ladder = client.get(joint + "/ladder?depth=3").body();
        String page = read(page(joint) + "/plan");
        assertThat(page)
                .contains("Done after ")
                .contains(ladder.at("/packing/powder/value").asString() + " g of powder, "
                        + ladder.at("/packing/igniters").asInt() + " igniters, "
                        + ladder.at("/packing/pins/0/count").asInt() + " pins M2.5")
                .doesNotContain("What another test would do");
        for (int i = 0; i < 6; i++) {
            client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        }
        assertThat(client.get(joint + "/next-charge").body().path("decision").asString())
                .isEqualTo("stop");
        assertThat(read(page(joint) + "/plan"))
                .contains("What another test would do")
                .doesNotContain("Pack for it");
    }
}
