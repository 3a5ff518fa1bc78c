package org.sunder.groundtest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.Thorough;

/** A row that no way in would store, put there by an older version or by hand: named, not counted, in nobody's way. */
@ServiceTest
class BrokenRowsTest {

    @Autowired
    Client client;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    EmptyLog emptyLog;

    String airframe = "";
    String joint = "";
    Client.Answer test;

    @BeforeEach
    void prepare() {
        emptyLog.empty();
        airframe = client.post("/api/airframes", Samples.AIRFRAME).header("Location");
        joint = client.post(airframe + "/joints", Samples.JOINT).header("Location");
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        test = client.post(joint + "/ground-tests", Samples.test("1.00", "partial"));
    }

    /** A hand in the database of a service that starts after it. */
    private JdbcClient.StatementSpec byHand(String sql) {
        jdbc.sql("update flyer set fleet_version = fleet_version + 1").update();
        return jdbc.sql(sql);
    }

    static Stream<Arguments> broken() {
        return Stream.of(
                Arguments.of("speed_value = '8', speed_unit = 'm/s'", "only a separated test has one"),
                Arguments.of("outcome = 'SEPARATED', speed_value = '8'", "speed"),
                Arguments.of("outcome = 'SEPARATED', speed_value = '1E999999999', speed_unit = 'm/s'", "speed"),
                Arguments.of("charge_value = '99999'", "50 g"),
                Arguments.of("charge_value = '1E999999999'", "charge"),
                Arguments.of("charge_value = 'x'", "charge"),
                Arguments.of("charge_unit = 'stone'", "charge"),
                Arguments.of("charge_value = '-1'", "more than nothing"),
                Arguments.of("outcome = 'MAYBE'", "outcome"),
                Arguments.of("containment = 'SOCK'", "containment"),
                Arguments.of("fired_at = timestamp with time zone '2200-01-01 00:00:00+00'", "future"),
                Arguments.of("fired_at = timestamp with time zone '1800-01-01 00:00:00+00'", "too far back"),
                Arguments.of("fired_offset_seconds = 99999", "offset"),
                Arguments.of("predicted_none = 7", "chance"),
                Arguments.of("factor_low = -1", "correction"));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void aBrokenRowIsNamedAndInNobodysWay(String change, String words) {
        String before = client.get(joint + "/next-charge").body().path("basis").toString();
        byHand("update ground_test set " + change + " where id = ?")
                .params(test.id())
                .update();
        var read = client.get(test.header("Location"));
        assertThat(read.status()).as(read.raw().body()).isEqualTo(200);
        assertThat(read.body().path("finding").asString("")).contains(words);
        assertThat(read.body().path("counted").asBoolean(true)).isFalse();
        for (String path : readers(change.hashCode())) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isLessThan(500);
        }
        assertThat(client.get(airframe + "/history").raw().body()).contains("\"finding\"");
        assertThat(client.get(joint + "/ground-tests").raw().body()).contains("\"finding\"");
        String after = client.get(joint + "/next-charge").body().path("basis").toString();
        assertThat(after).isNotEqualTo(before).isEqualTo(before.replace(":2", ":1"));
        assertThat(client.post(test.header("Location") + "/void", "{\"reason\":\"broken\"}")
                        .status())
                .isEqualTo(200);
    }

    /** What reads the log of a joint; a run that is not thorough asks another few of them in each case. */
    private List<String> readers(int which) {
        List<String> all = new ArrayList<>(List.of(
                joint + "/next-charge",
                joint + "/estimate",
                joint + "/ladder",
                joint + "/curve",
                joint + "/ground-tests",
                joint + "/flight-events",
                airframe + "/history",
                "/api/fleet",
                "/api/export",
                "/api/field-kit",
                "/",
                airframe.replace("/api", ""),
                joint.replace("/api", ""),
                airframe.replace("/api", "") + "/history"));
        Collections.rotate(all, which % all.size());
        return all.subList(0, Thorough.count(4, all.size()));
    }

    @Test
    void theTableForASpreadsheetSaysWhatIsWrong() throws IOException, InterruptedException {
        byHand("update ground_test set charge_unit = 'stone' where id = ?")
                .params(test.id())
                .update();
        var csv = HttpClient.newHttpClient()
                .send(
                        client.request("/api/export", "Accept", "text/csv").build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(csv.body()).contains("1.00 stone is stored");
    }

    @Test
    void aSetupThatCannotBeIsNamedWhereItIsRead() {
        for (String document :
                new String[] {"{", "[]", "{}", "null", "{\"innerDiameter\":{\"value\":1e999999999,\"unit\":\"mm\"}}"}) {
            byHand("update setup set document = ?").params(document).update();
            var read = client.get(joint);
            assertThat(read.status()).as(read.raw().body()).isEqualTo(200);
            assertThat(read.body().path("finding").asString("")).contains("cannot be read");
            assertThat(client.get(joint + "/setups").raw().body()).contains("cannot be read");
            var next = client.get(joint + "/next-charge");
            assertThat(next.status()).isLessThan(500);
            assertThat(next.raw().body()).contains("cannot be read");
            assertThat(client.get("/api/export").status()).isEqualTo(200);
        }
    }

    @Test
    void aLoadOutOrAnAirframeThatCannotBeReadIsInNobodysWay() {
        String id = joint.replaceAll(".*/", "");
        var loadOut = client.post(airframe + "/load-outs", Samples.loadOut(id));
        byHand("update load_out set document = '{' where id = ?")
                .params(loadOut.id())
                .update();
        byHand("update airframe set outer_diameter_value = '1E999999999'").update();
        for (String path : new String[] {
            airframe,
            airframe + "/load-outs",
            loadOut.header("Location"),
            airframe + "/fit",
            "/api/export",
            "/api/airframes"
        }) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isEqualTo(200);
        }
        assertThat(client.get(loadOut.header("Location")).raw().body()).contains("cannot be read");
    }
}
