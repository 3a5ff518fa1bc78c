package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;

/** Out and in again without loss; all or nothing; tables that no spreadsheet runs. */
@KeyedServiceTest
class ExchangeTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    JdbcClient jdbc;

    Client one;
    Client other;

    @BeforeEach
    void prepare() {
        one = flyer();
        other = flyer();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void aFleetComesBackByteForByte(long seed) {
        new GeneratedFleet(one, seed).enter();
        String exported = one.get("/api/export").raw().body();
        var first = other.post("/api/import", exported);
        assertThat(first.status()).as(first.raw().body()).isEqualTo(200);
        assertThat(other.get("/api/export").raw().body()).isEqualTo(exported);
        var again = other.post("/api/import", exported);
        assertThat(again.body().path("added").asInt()).isZero();
        assertThat(again.body().path("known").asInt())
                .isEqualTo(first.body().path("added").asInt());
        assertThat(other.get("/api/export").raw().body()).isEqualTo(exported);
        for (var airframe : one.get("/api/airframes").body().path("items")) {
            String joints = "/api/airframes/" + airframe.path("id").asString() + "/joints";
            for (var joint : one.get(joints).body().path("items")) {
                String next = "/api/joints/" + joint.path("id").asString() + "/next-charge";
                assertThat(other.get(next).body()).isEqualTo(one.get(next).body());
            }
        }
    }

    @Test
    void anImportThatFailsNamesTheRowAndLeavesNothing() {
        new GeneratedFleet(one, 5).enter();
        String exported = one.get("/api/export").raw().body();
        String empty = other.get("/api/export").raw().body();
        String[][] faults = {
            {"\"outcome\":\"[a-z]+\"", "\"outcome\":\"maybe\"", "/groundTests/0/outcome"},
            {"\"chargeUnit\":\"g\"", "\"chargeUnit\":\"stone\"", "/groundTests/0/chargeUnit"},
            {"\"chargeValue\":\"[0-9.]+\"", "\"chargeValue\":\"-1\"", "/groundTests/0/chargeValue"},
            {"\"currentRevision\":\\d+", "\"currentRevision\":9", ""},
            {"\"units\":\"[a-z]+\"", "\"units\":\"us\",\"flyerId\":\"x\"", "/airframes/0/flyerId"},
            {"\"event\":\"main\"", "\"event\":\"mian\"", "/joints/0/event"},
            {"\"format\":\"sunder-export\"", "\"format\":\"other\"", "/format"}
        };
        for (String[] fault : faults) {
            var refused = other.post("/api/import", exported.replaceFirst(fault[0], fault[1]));
            assertThat(refused.status()).as(fault[1] + refused.raw().body()).isEqualTo(400);
            assertThat(refused.raw().body()).contains(fault[2]);
            assertThat(other.get("/api/export").raw().body()).isEqualTo(empty);
        }
        assertThat(other.post("/api/import", exported.substring(0, exported.length() / 2))
                        .status())
                .isEqualTo(400);
        assertThat(other.post("/api/import", exported + "{}").status()).isEqualTo(400);
        assertThat(other.post("/api/import", "[]").status()).isEqualTo(400);
        assertThat(other.get("/api/export").raw().body()).isEqualTo(empty);
    }

    @Test
    void aSetupChangedOnItsWayIsComputedAsItStandsWhereItArrived() {
        String airframe = one.airframe();
        String estimate = one.joint(airframe) + "/estimate";
        String before = one.get(estimate).body().path("retention").toString();
        String changed = one.get("/api/export").raw().body().replace("\"count\":3", "\"count\":1");
        assertThat(other.post("/api/import", changed).status()).isEqualTo(200);
        assertThat(other.get(estimate).body().path("retention").toString()).isNotEqualTo(before);
        assertThat(one.get(estimate).body().path("retention").toString()).isEqualTo(before);
    }

    @Test
    void aSetupThatCannotBeIsNamedByItsRow() {
        String airframe = one.airframe();
        one.joint(airframe);
        String empty = other.get("/api/export").raw().body();
        String overfilled = one.get("/api/export").raw().body().replace("\"value\":340,", "\"value\":9340,");
        var refused = other.post("/api/import", overfilled);
        assertThat(refused.status()).as(refused.raw().body()).isEqualTo(422);
        assertThat(refused.body().path("errors").get(0).path("pointer").asString())
                .startsWith("/setups/0/document/contents");
        assertThat(other.get("/api/export").raw().body()).isEqualTo(empty);
    }

    @Test
    void aRowChangedMeanwhileIsNotWrittenOver() {
        String airframe = one.airframe();
        String exported = one.get("/api/export").raw().body();
        one.put(airframe, "{\"name\":\"renamed\",\"units\":\"metric\"}", "If-Match", "*");
        var refused = one.post("/api/import", exported);
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.fault("/airframes/0").path("detail").asString()).contains("other content");
        assertThat(one.get(airframe).body().path("name").asString()).isEqualTo("renamed");
    }

    @Test
    void everyColumnIsExported() {
        for (Table table : Table.ALL) {
            List<String> columns = jdbc.sql("select lower(column_name) from information_schema.columns"
                            + " where lower(table_name) = ? and lower(table_schema) = 'public'")
                    .params(table.name())
                    .query(String.class)
                    .list();
            List<String> exported =
                    new ArrayList<>(table.columns().stream().map(Column::name).toList());
            exported.add("flyer_id");
            assertThat(columns).as(table.name()).containsExactlyInAnyOrderElementsOf(exported);
        }
    }

    @Test
    void aSpreadsheetRunsNothing() throws IOException, InterruptedException {
        String airframe =
                one.post("/api/airframes", "{\"name\":\"=cmd|' /C calc'!A0\"}").header("Location");
        String joint = one.joint(airframe);
        one.post(
                joint + "/ground-tests",
                "{\"notes\":\"a, \\\"b\\\"\\nc\","
                        + Samples.test("0.80", "none").substring(1));
        String csv = csv("/api/export");
        assertThat(csv).contains(",'=cmd|' /C calc'!A0,").contains("\"a, \"\"b\"\"\nc\"\r\n");
        assertThat(csv.lines().findFirst().orElse("")).startsWith("id,airframe,joint,");
        assertThat(csv("/api/export?raw=true")).contains(",=cmd|' /C calc'!A0,");
        assertThat(csv(airframe + "/history"))
                .startsWith("at,kind,joint,")
                .contains("test-fired,nose to bay,1,ground,0.80,g,none,false,")
                .contains("2026-05-03T10:20+01:00");
        assertThat(one.get(airframe + "/history").header("Content-Type")).startsWith("application/json");
        assertThat(one.get("/api/export").header("Content-Type")).startsWith("application/json");
    }

    private String csv(String path) throws IOException, InterruptedException {
        var answer = HttpClient.newHttpClient()
                .send(one.request(path, "Accept", "text/csv").build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
        return answer.body();
    }

    private Client flyer() {
        return client.with(keys.issue(flyers.enter("someone").id(), "test", Scope.FULL, null)
                .secret());
    }
}
