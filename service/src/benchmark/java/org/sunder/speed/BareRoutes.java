package org.sunder.speed;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.servlet.function.RouterFunction;
import org.springframework.web.servlet.function.RouterFunctions;
import org.springframework.web.servlet.function.ServerRequest;
import org.springframework.web.servlet.function.ServerResponse;
import org.sunder.persistence.DurableTransactions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The least that could answer: statements by hand and maps, behind the same filters and with the same checks, but nothing
 * computed. What the service is measured against.
 */
class BareRoutes {

    static final UUID FLYER = UUID.fromString("00000000-0000-7000-8000-000000000001");

    @Bean
    RouterFunction<ServerResponse> bare(JdbcClient jdbc, DurableTransactions transactions, JsonMapper json) {
        return RouterFunctions.route()
                .GET("/api/bare/airframes/{id}", request -> airframe(jdbc, id(request)))
                .GET("/api/bare/joints/{id}/ground-tests", request -> tests(jdbc, id(request)))
                .POST(
                        "/api/bare/joints/{id}/ground-tests",
                        request -> log(jdbc, transactions, id(request), json.readTree(request.body(String.class))))
                .build();
    }

    private static UUID id(ServerRequest request) {
        return UUID.fromString(request.pathVariable("id"));
    }

    private static ServerResponse airframe(JdbcClient jdbc, UUID id) {
        Map<String, Object> body = jdbc.sql("select * from airframe where flyer_id = ? and id = ?")
                .params(FLYER, id)
                .query((row, i) -> airframe(row))
                .single();
        return ServerResponse.ok().eTag("\"v" + body.get("version") + "\"").body(body);
    }

    private static Map<String, Object> airframe(ResultSet row) throws SQLException {
        return Map.of(
                "id", row.getString("id"),
                "name", row.getString("name"),
                "units", row.getString("units"),
                "outerDiameter", quantity(row.getString("outer_diameter_value"), row.getString("outer_diameter_unit")),
                "createdAt", row.getObject("created_at", OffsetDateTime.class),
                "version", row.getLong("version"));
    }

    private static Map<String, Object> quantity(String value, String unit) {
        return Map.of("value", new BigDecimal(value), "unit", unit);
    }

    private static ServerResponse tests(JdbcClient jdbc, UUID joint) {
        jdbc.sql("select id from joint where flyer_id = ? and id = ?")
                .params(FLYER, joint)
                .query(UUID.class)
                .single();
        List<Map<String, Object>> items = jdbc.sql("""
                        select * from ground_test t where flyer_id = ? and joint_id = ? and occasion = 'GROUND'
                          and fired_at <= timestamp with time zone '9999-01-01 00:00:00+00'
                        order by flyer_id, joint_id, occasion, fired_at desc, id desc fetch first 51 rows only
                        """)
                .params(FLYER, joint)
                .query((row, i) -> test(row))
                .list();
        jdbc.sql("select v.* from ground_test_void v where v.flyer_id = ? and v.test_id = ?")
                .params(FLYER, items.isEmpty() ? joint : UUID.fromString((String) items.get(0).get("id")))
                .query()
                .listOfRows();
        return ServerResponse.ok().body(Map.of("items", items));
    }

    private static Map<String, Object> test(ResultSet row) throws SQLException {
        return Map.of(
                "id", row.getString("id"),
                "jointId", row.getString("joint_id"),
                "setupRevision", row.getInt("setup_revision"),
                "charge", quantity(row.getString("charge_value"), row.getString("charge_unit")),
                "outcome", row.getString("outcome"),
                "firedAt", row.getObject("fired_at", OffsetDateTime.class),
                "receivedAt", row.getObject("received_at", OffsetDateTime.class),
                "predicted",
                        Map.of(
                                "separated", row.getDouble("predicted_separated"),
                                "partial", row.getDouble("predicted_partial"),
                                "none", row.getDouble("predicted_none")),
                "correction", Map.of("factor", row.getDouble("factor_median"), "low", row.getDouble("factor_low")));
    }

    private static ServerResponse log(JdbcClient jdbc, DurableTransactions transactions, UUID joint, JsonNode body) {
        BigDecimal charge = body.path("charge").path("value").decimalValue();
        OffsetDateTime firedAt = OffsetDateTime.parse(body.path("firedAt").asString());
        if (charge.signum() <= 0 || firedAt.isAfter(OffsetDateTime.now())) {
            return ServerResponse.badRequest().build();
        }
        UUID id = UUID.randomUUID();
        transactions.run(() -> {
            UUID setup = jdbc.sql("""
                            select s.id from setup s join joint j on j.flyer_id = s.flyer_id and j.id = s.joint_id
                              and j.current_revision = s.revision where j.flyer_id = ? and j.id = ?
                            """).params(FLYER, joint).query(UUID.class).single();
            jdbc.sql("insert into ground_test values (?,?,?,?,?,1,?,?,?,false,null,null,null,null,?,0,?,0,0,0,1,1,1)")
                    .params(FLYER, id, "GROUND", joint, setup, charge.toPlainString(), "g")
                    .params(body.path("outcome").asString().toUpperCase(java.util.Locale.ROOT))
                    .params(firedAt, OffsetDateTime.now())
                    .update();
        });
        return ServerResponse.status(201)
                .header("Location", "/api/ground-tests/" + id)
                .body(Map.of("id", id, "charge", quantity(charge.toPlainString(), "g")));
    }
}
