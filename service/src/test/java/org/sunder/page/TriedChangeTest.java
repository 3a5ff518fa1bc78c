package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.Samples;

/** A change that is looked at: what it would do, with nothing stored. */
class TriedChangeTest extends OneJoint {

    private static final Pattern ANSWER = Pattern.compile("class=\"answer[^\"]*\"[^>]*>([^<]*\\d[^<]*)<");

    @BeforeEach
    void itsTests() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "partial"));
        client.post(joint + "/ground-tests", Samples.test("1.05", "separated", "2026-05-03T11:20:00+01:00"));
    }

    @Test
    void storesNothing() {
        String before = client.get("/api/export").raw().body();
        assertThat(tried(Samples.SETUP.replace("\"count\":3", "\"count\":2"))).contains("as typed");
        assertThat(client.get("/api/export").raw().body()).isEqualTo(before);
    }

    /** Two pins of 205.6 N and 15 N of fit instead of three: 426 N, a third less. */
    @Test
    void showsTheDifferenceToTheSetupInForce() {
        assertThat(tried(Samples.SETUP.replace("\"count\":3", "\"count\":2")))
                .contains("632 N", "426 N", "▼ 33 %", "Instead of")
                .contains("stale", "same");
        assertThat(tried(Samples.SETUP)).contains("This is the setup in force").doesNotContain("Instead of", "▼", "▲");
    }

    /** The page asks anew why a setup differs, so it opens with no note in its field. */
    @Test
    void anotherNoteIsNoOtherSetup() {
        String noted = Samples.SETUP.replaceFirst("}$", ",\"note\":\"two pins were enough\"}");
        assertThat(client.put(joint + "/setup", noted, "If-Match", "*").status())
                .isEqualTo(200);
        assertThat(tried(Samples.SETUP)).contains("This is the setup in force").doesNotContain("Instead of");
        assertThat(tried(Samples.SETUP.replace("\"count\":3", "\"count\":2"))).contains("Instead of");
    }

    /** What was promised is what stands once the change is kept. */
    @ParameterizedTest
    @ValueSource(strings = {"\"count\":2", "\"count\":4", "\"count\":3,\"measured\":null"})
    void namesTheChargeThatStandsOnceItIsKept(String pins) {
        String setup = Samples.SETUP
                .replace("\"count\":3", pins.replace(",\"measured\":null", ""))
                .replace("\"value\":340", pins.contains("null") ? "\"value\":130" : "\"value\":340");
        String promised = answer(tried(setup));
        assertThat(client.put(joint + "/setup", setup, "If-Match", "*").status())
                .isEqualTo(200);
        assertThat(promised).isEqualTo(answer(read(page(joint) + "/plan")));
    }

    @Test
    void whatCannotBeIsNamedAtItsField() {
        var refused = client.post(path(), "{\"setup\":" + Samples.SETUP.replace("\"value\":620", "\"value\":20") + "}");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body().path("errors")).isNotEmpty();
        assertThat(client.post(path(), "{}").status()).isEqualTo(400);
        assertThat(client.post("/joints/01890000-0000-7000-8000-000000000000/tried-change", body(Samples.SETUP))
                        .status())
                .isEqualTo(404);
    }

    private String tried(String setup) {
        var answer = client.post(path(), body(setup));
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.raw().body();
    }

    private String path() {
        return page(joint) + "/tried-change";
    }

    private static String body(String setup) {
        return "{\"setup\":" + setup + "}";
    }

    private static String answer(String page) {
        List<String> found =
                ANSWER.matcher(page).results().map(match -> match.group(1)).toList();
        assertThat(found).as(page).isNotEmpty();
        return found.get(0);
    }
}
