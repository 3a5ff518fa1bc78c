package org.sunder.groundtest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** A row that no way in would store, put there by an older version or by hand: named, not counted, in nobody's way. */
@ServiceTest
class BrokenRowsTest {

    private record Broken(String change, String words) {}

    private static final List<Broken> BROKEN = List.of(
            new Broken("speed_value = '8', speed_unit = 'm/s'", "only a separated test has one"),
            new Broken("outcome = 'SEPARATED', speed_value = '8'", "speed"),
            new Broken("outcome = 'SEPARATED', speed_value = '1E999999999', speed_unit = 'm/s'", "speed"),
            new Broken("speed_uncertainty_percent = '6'", "but no speed"),
            new Broken(
                    "outcome = 'SEPARATED', speed_value = '8', speed_unit = 'm/s', speed_uncertainty_percent = '2'",
                    "3 to 50 %"),
            new Broken(
                    "outcome = 'SEPARATED', speed_value = '8', speed_unit = 'm/s', speed_uncertainty_percent = 'x'",
                    "uncertainty of the speed"),
            new Broken("charge_value = '99999'", "50 g"),
            new Broken("charge_value = '1E999999999'", "charge"),
            new Broken("charge_value = 'x'", "charge"),
            new Broken("charge_unit = 'stone'", "charge"),
            new Broken("charge_value = '-1'", "more than nothing"),
            new Broken("outcome = 'MAYBE'", "outcome"),
            new Broken("containment = 'SOCK'", "containment"),
            new Broken("fired_at = timestamp with time zone '2200-01-01 00:00:00+00'", "future"),
            new Broken("fired_at = timestamp with time zone '1800-01-01 00:00:00+00'", "too far back"),
            new Broken("fired_offset_seconds = 99999", "offset"),
            new Broken("predicted_none = 7", "chance"),
            new Broken("factor_low = -1", "correction"));

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
        airframe = client.airframe();
        joint = client.joint(airframe);
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        test = client.post(joint + "/ground-tests", Samples.test("1.00", "partial"));
    }

    /** A hand in the database of a service that starts after it. */
    private JdbcClient.StatementSpec byHand(String sql) {
        jdbc.sql("update flyer set fleet_version = fleet_version + 1").update();
        return jdbc.sql(sql);
    }

    /** All kinds in one log, beside two rows that are sound. */
    @Test
    void aBrokenRowIsNamedAndInNobodysWay() {
        String sound = client.get(joint + "/next-charge").body().path("basis").toString();
        Map<String, String> words = new LinkedHashMap<>();
        for (Broken kind : BROKEN) {
            var row = client.post(joint + "/ground-tests", Samples.test("1.00", "partial"));
            words.put(row.header("Location"), kind.words());
            byHand("update ground_test set " + kind.change() + " where id = ?")
                    .params(row.id())
                    .update();
        }
        words.forEach((row, said) -> {
            var read = client.get(row);
            assertThat(read.status()).as(read.raw().body()).isEqualTo(200);
            assertThat(read.body().path("finding").asString("")).contains(said);
            assertThat(read.body().path("counted").asBoolean(true)).isFalse();
        });
        for (String path : List.of(
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
                airframe.replace("/api", "") + "/history")) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isLessThan(500);
        }
        assertThat(findings(client.get(airframe + "/history"))).isEqualTo(BROKEN.size());
        assertThat(findings(client.get(joint + "/ground-tests?limit=100"))).isEqualTo(BROKEN.size());
        assertThat(client.get(joint + "/next-charge").body().path("basis").toString())
                .as("what the answers rest on are the sound rows")
                .isEqualTo(sound);
        words.keySet()
                .forEach(row -> assertThat(client.post(row + "/void", "{\"reason\":\"broken\"}")
                                .status())
                        .isEqualTo(200));
    }

    private static int findings(Client.Answer answer) {
        return answer.raw().body().split("\"finding\"", -1).length - 1;
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

    /** Stored while a bay wider than the nose was only warned of: 92 mm at 150 mm deep, where the nose has 86.6 mm. */
    @Test
    void aBayThatOnceWasTakenInIsAFindingAndTheRestOfTheFleetGoesOn() {
        String other = client.joint(airframe);
        byHand(
                        "update setup set document = replace(document, '\"depth\":{\"value\":45', '\"depth\":{\"value\":150') where joint_id = ?")
                .params(UUID.fromString(joint.replaceAll(".*/", "")))
                .update();
        var read = client.get(joint);
        assertThat(read.status()).as(read.raw().body()).isEqualTo(200);
        assertThat(read.body().path("finding").asString(""))
                .contains("bay pushed in is 92 mm wide, but the cavity only 86.6", "at 150 mm deep");
        for (String path : List.of(joint + "/next-charge", joint + "/estimate", joint + "/ladder", joint + "/curve")) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isEqualTo(422);
        }
        for (String path : List.of(
                other + "/next-charge",
                joint + "/setups",
                joint + "/ground-tests",
                airframe + "/history",
                airframe + "/fit",
                "/api/fleet/correction",
                "/api/export",
                "/api/field-kit",
                "/",
                airframe.replace("/api", "") + "/load-outs",
                airframe.replace("/api", "") + "/flight-day",
                joint.replace("/api", ""),
                joint.replace("/api", "") + "/plan",
                airframe.replace("/api", ""))) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isEqualTo(200);
        }
        var mended = client.put(joint + "/setup", Samples.SETUP, "If-Match", read.header("ETag"));
        assertThat(mended.status()).as(mended.raw().body()).isEqualTo(200);
        for (String path : List.of(
                joint + "/next-charge",
                airframe.replace("/api", ""),
                airframe + "/history",
                joint.replace("/api", "") + "/plan")) {
            var answer = client.get(path);
            assertThat(answer.status()).as(path + answer.raw().body()).isEqualTo(200);
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
