package org.sunder.persistence;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;
import org.sunder.photo.Pictures;

/** What a flyer waits for asks for that flyer's rows alone, so that tables laid out by flyer are asked on one shard. */
@KeyedServiceTest
@DisabledIfSystemProperty(
        named = "sunder.test.database",
        matches = "postgresql",
        disabledReason = "the embedded database tells its statements; they are the same on both")
class ByFlyerTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    JdbcTemplate jdbc;

    @Test
    void theMainPathAsksForOneFlyersRows() {
        String secret =
                keys.issue(flyers.enter("flyer").id(), "desk", Scope.FULL, null).secret();
        Client flyer = client.with(secret);
        jdbc.execute("set query_statistics true");
        try {
            jdbc.execute("set query_statistics_max_entries 10000");
            walk(flyer);
            List<String> statements = jdbc.queryForList(
                    "select sql_statement from information_schema.query_statistics order by 1", String.class);
            assertThat(statements)
                    .as("what is told")
                    .anyMatch(sql -> sql.matches("(?is)insert into ground_test .*"))
                    .anyMatch(sql -> sql.matches("(?is)insert into idempotent_answer .*"))
                    .anyMatch(sql -> sql.matches("(?is)insert into photo_content .*"))
                    .anyMatch(sql -> sql.matches("(?is)update flyer set fleet_version .*"))
                    .anyMatch(sql -> sql.matches("(?is)select .* from setup .*"));
            assertThat(layout().crossing(statements))
                    .as("only a key tells who asks, so nothing is known of the flyer before it is found")
                    .isNotEmpty()
                    .allMatch(sql -> sql.contains("from access_key k") && sql.contains("where k.digest = ?"));
        } finally {
            jdbc.execute("set query_statistics false");
        }
    }

    /** A field day: a rocket, tests, what is asked before and after, the pages, a photo. */
    private static void walk(Client flyer) {
        String airframe = flyer.airframe();
        String joint = flyer.joint(airframe);
        String test = flyer.post(joint + "/ground-tests", Samples.test("0.80", "partial"), "Idempotency-Key", "one")
                .header("Location");
        flyer.post(joint + "/ground-tests", Samples.test("0.80", "partial"), "Idempotency-Key", "one");
        flyer.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
        byte[] photo = Pictures.png(10, 10);
        assertThat(flyer.send(flyer.request(test + "/photo", "Content-Type", "image/png")
                                .PUT(HttpRequest.BodyPublishers.ofByteArray(photo)))
                        .status())
                .isEqualTo(201);
        for (String path : new String[] {
            "/api/airframes",
            airframe,
            airframe + "/joints",
            airframe + "/history",
            airframe + "/load-outs",
            joint,
            joint + "/ground-tests",
            joint + "/estimate",
            joint + "/next-charge",
            joint + "/ladder?depth=1",
            joint + "/flight-charge",
            test,
            test + "/photo",
            "/api/field-kit?depth=1",
            "/api/export",
            "/",
            airframe.replace("/api", ""),
            airframe.replace("/api", "") + "/summary",
            airframe.replace("/api", "") + "/flight-day",
            joint.replace("/api", ""),
            joint.replace("/api", "") + "/plan",
            "/stock",
            "/fleet",
            "/field"
        }) {
            String wanted = path.startsWith("/api") ? "application/json, image/*" : "text/html";
            assertThat(flyer.get(path, "Accept", wanted).status())
                    .as(path)
                    .isIn(200, path.endsWith("/flight-charge") ? 409 : 200);
        }
        flyer.post(test + "/void", "{\"reason\":\"igniter\"}");
    }

    /** The tables whose key begins with the flyer. */
    private ByFlyer layout() {
        List<String> tables = jdbc.queryForList(
                "select lower(table_name) from information_schema.columns"
                        + " where column_name = 'FLYER_ID' and table_schema = 'PUBLIC'",
                String.class);
        assertThat(tables).contains("airframe", "joint", "setup", "ground_test", "idempotent_answer", "access_key");
        return new ByFlyer(tables);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "select id from joint",
                "select id from joint where id = ?",
                "select j.id from joint j where j.id = ?",
                "select t.id from ground_test t join joint j on j.id = t.joint_id where t.flyer_id = ?",
                "select t.id from ground_test t, joint j where t.flyer_id = ? and j.flyer_id = ?",
                "select t.id from ground_test t join joint j on j.flyer_id = t.flyer_id where t.id = ?",
                "select id from joint where flyer_id = ? or id = ?",
                "select id from joint where flyer_id = ? and id in (select joint_id from ground_test)",
                "update joint set name = ? where id = ?",
                "delete from joint where id = ?",
                "insert into joint (id, name) values (?, ?)",
                "select id, name from flyer order by created_at",
                "select id from joint where other_flyer_id = ?"
            })
    void moreThanOneFlyersRowsAreTold(String sql) {
        assertThat(new ByFlyer(List.of("joint", "ground_test")).crossing(List.of(sql)))
                .containsExactly(sql);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "select id from joint where flyer_id = ? and id = ?",
                "SELECT j.id FROM joint j WHERE j.flyer_id=? AND j.id=?",
                "select t.id from ground_test t join joint j on j.flyer_id = t.flyer_id and j.id = t.joint_id where t.flyer_id = ?",
                "select id from joint where flyer_id = ? and (name = ? or id = ?)",
                "update joint set name = ? where flyer_id = ? and id = ?",
                "insert into joint (flyer_id, id) values (?, ?)",
                "update flyer set fleet_version = fleet_version + 1 where id = ?",
                "select max(number) from pool_snapshot",
                "checkpoint sync"
            })
    void oneFlyersRowsAreOneShards(String sql) {
        assertThat(new ByFlyer(List.of("joint", "ground_test")).crossing(List.of(sql)))
                .isEmpty();
    }
}
