package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Samples;

/** Rockets put away and brought back, and what was entered by mistake deleted, by the forms of the pages. */
class PutAwayTest extends OneJoint {

    @Autowired
    EntityManagerFactory factory;

    @Test
    void aRocketPutAwayIsListedAndComesBackWithOnePress() {
        assertThat(read("/")).doesNotContain("/airframes/put-away");
        assertThat(read("/airframes/put-away")).contains("None is put away");
        client.delete(airframe, "If-Match", "*");
        assertThat(read("/")).contains("href=\"/airframes/put-away\"").doesNotContain(">Bittern<");
        assertThat(read("/fleet")).contains("href=\"/airframes/put-away\"");
        assertThat(read("/airframes/put-away")).contains(">Bittern<", "1 joint, put away", "Bring it back: Bittern");
        assertThat(read(page(airframe))).contains("Put away.", "Bring it back");
        var back = submitted(page(airframe) + "/bring-back", "");
        assertThat(back.statusCode()).isEqualTo(302);
        assertThat(back.headers().firstValue("Location").orElse("")).endsWith(page(airframe));
        assertThat(read("/")).contains(">Bittern<").doesNotContain("/airframes/put-away");
        assertThat(read(page(airframe) + "/flight-day")).contains("nose to bay");
    }

    @Test
    void theListOfThosePutAwayIsReadAtOnceHoweverLong() {
        client.delete(airframe, "If-Match", "*");
        long one = statements();
        for (int i = 0; i < 3; i++) {
            String more = client.airframe();
            client.joint(more);
            client.joint(more);
            client.delete(more, "If-Match", "*");
        }
        assertThat(statements()).isEqualTo(one);
        assertThat(read("/airframes/put-away")).contains("1 joint, put away", "2 joints, put away");
    }

    private long statements() {
        Statistics statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        read("/airframes/put-away");
        return statistics.getPrepareStatementCount();
    }

    @Test
    void whatGoesAlongWithAJointIsNamedFirst() {
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "*");
        client.post(airframe + "/load-outs", Samples.loadOut(joint.replaceAll(".*/", "")));
        String question = read(page(joint) + "/remove");
        assertThat(question).contains("Delete nose to bay?", "2 setups", "the load-out long case, big main", "Keep it");
        assertThat(read(page(joint))).contains("href=\"" + page(joint) + "/remove\"");
        client.put(joint + "/setup", Samples.SETUP, "If-Match", "*");
        var stale = submitted(page(joint) + "/remove", agreed(question));
        assertThat(stale.statusCode()).as("a setup came in between").isEqualTo(409);
        assertThat(stale.body()).contains("Nothing was deleted", "3 setups");
        assertThat(client.get(joint).status()).isEqualTo(200);
        var gone = submitted(page(joint) + "/remove", agreed(stale.body()));
        assertThat(gone.statusCode()).isEqualTo(302);
        assertThat(gone.headers().firstValue("Location").orElse("")).endsWith(page(airframe));
        assertThat(client.get(joint).status()).isEqualTo(404);
        assertThat(client.get(airframe + "/load-outs").body().path("items")).isEmpty();
    }

    @Test
    void whatGoesAlongWithARocketIsNamedFirst() {
        assertThat(read(page(airframe) + "/edit")).contains("href=\"" + page(airframe) + "/remove\"");
        String question = read(page(airframe) + "/remove");
        assertThat(question).contains("Delete Bittern?", "the joint nose to bay", "1 setup");
        assertThat(submitted(page(airframe) + "/remove", "").statusCode())
                .as("agreed to nothing")
                .isEqualTo(409);
        assertThat(submitted(page(airframe) + "/remove", agreed(question)).statusCode())
                .isEqualTo(302);
        assertThat(client.get(airframe).status()).isEqualTo(404);
    }

    @Test
    void whatHasALogIsNotOfferedForDeleting() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "none"));
        for (String path : new String[] {page(joint), page(airframe)}) {
            String said = read(path + "/remove");
            assertThat(said)
                    .contains(" stays</h1>", "One firing is logged there")
                    .doesNotContain("Delete it for good");
            assertThat(submitted(path + "/remove", "").statusCode()).isEqualTo(409);
        }
        String key = "agreed=1-0-1-0-0";
        var forced = submitted(page(joint) + "/remove", key);
        assertThat(forced.statusCode()).as("agreed to by hand").isEqualTo(409);
        assertThat(client.get(joint).status()).isEqualTo(200);
    }

    /** What the form sends. */
    private static String agreed(String text) {
        Matcher value = Pattern.compile("name=\"agreed\" value=\"([^\"]*)\"").matcher(text);
        assertThat(value.find()).isTrue();
        return "agreed=" + value.group(1);
    }
}
