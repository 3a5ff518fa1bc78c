package org.sunder.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import tools.jackson.databind.JsonNode;

/** The physics over HTTP, against values from outside: worked by hand, or of the source named. */
@ServiceTest
class ChecksApiTest {

    private static final String TUBE = """
            [{"kind":"cylinder","innerDiameter":{"value":100,"unit":"mm"},"length":{"value":500,"unit":"mm"}}]""";

    private static final String BOOSTER = """
            {"innerDiameter":{"value":100,"unit":"mm"},"cavity":%s,
             "contents":[{"name":"coupler","kind":"intrusion","depth":{"value":100,"unit":"mm"},"diameter":{"value":100,"unit":"mm"}}],
             "pins":[{"thread":"M2.5","count":2}]}""".formatted(TUBE);

    private static final String ITEMS = """
            [{"name":"%s","items":[{"name":"case","kind":"hard","length":{"value":%d,"unit":"mm"},"diameter":{"value":54,"unit":"mm"},"place":"far-end"}]}]""";

    @Autowired
    Client client;

    @Test
    void volumeOfATubeIsThatOfACylinder() {
        JsonNode answer = ok("volume", "{\"cavity\":" + TUBE + ",\"contents\":[" + """
                {"name":"harness","kind":"fabric","material":"aramid","mass":{"value":144,"unit":"g"}}]}""");
        // pi/4 * (10 cm)^2 * 50 cm = 3.927 L; aramid at 1.44 g/cm3 (polymer handbooks, from memory): 0.1 L.
        assertThat(value(answer, "cavityVolume")).isCloseTo(3.927, offset(0.0005));
        assertThat(value(answer.path("contents").get(0), "volume")).isCloseTo(0.1, offset(1e-6));
        assertThat(value(answer, "freeVolume")).isCloseTo(3.827, offset(0.0005));
    }

    @Test
    void retentionIsNylonOnTheRootAreaPlusTheFit() {
        JsonNode answer = ok("retention", """
                {"pins":[{"thread":"M2.5","count":3}],"fitForce":{"value":15,"unit":"N"},
                 "innerDiameter":{"value":92,"unit":"mm"},"shoulder":{"value":46,"unit":"mm"}}""");
        // ISO 898-1 root diameter 2.5 - 1.226869*0.45 = 1.94791 mm; 69 MPa (ASTM D732 data): 205.6 N.
        assertThat(value(answer.path("pins").get(0), "one")).isCloseTo(205.6, offset(0.05));
        assertThat(value(answer, "retention")).isCloseTo(631.9, offset(0.1));
        // 631.9 N on pi/4 * (92 mm)^2 = 66.476 cm2
        assertThat(value(answer, "thresholdPressure")).isCloseTo(95.05, offset(0.05));
        assertThat(answer.path("shoulder").path("calibres").asDouble()).isEqualTo(0.5);
        assertThat(answer.path("shoulder").path("steady").asBoolean()).isTrue();
    }

    @Test
    void trappedAirIsTheStandardAtmospheresDifference() {
        JsonNode answer = ok("pins-in-flight", "{\"setup\":" + Samples.SETUP + """
                ,"flight":{"climb":{"siteElevation":{"value":0,"unit":"m"},"eventAltitude":{"value":3000,"unit":"m"}},
                           "jerk":{"mass":{"value":0.5,"unit":"kg"},"deceleration":{"value":40,"unit":"g0"}}}}""");
        // U.S. Standard Atmosphere 1976: 101325 Pa at sea level, 70121 Pa at 3000 m; on 66.476 cm2.
        assertThat(force(answer, "trapped-pressure")).isCloseTo((101_325 - 70_121) * 66.476e-4, offset(0.1));
        assertThat(force(answer, "first-event-jerk")).isCloseTo(0.5 * 40 * 9.80665, offset(0.05));
        assertThat(force(answer, "jerk-with-trapped-pressure"))
                .isCloseTo(force(answer, "trapped-pressure") + 196.1, offset(0.2));
        assertThat(answer.path("requiredMargin").asInt()).isEqualTo(2);
        assertThat(answer.path("holds").asBoolean()).isFalse();
        int count = answer.path("smallest").path("count").asInt();
        double holding = value(answer, "holdingForce") / 3;
        double needed = 2 * value(answer, "worst");
        assertThat(count * holding).isGreaterThanOrEqualTo(needed * 0.999);
        assertThat((count - 1) * holding).isLessThan(needed);
        assertThat(answer.path("cautions")).hasSizeGreaterThanOrEqualTo(8);
    }

    @Test
    void aHundredCubicInchesTakeOneQuarterInchHole() {
        String body = """
                {"bayVolume":{"value":100,"unit":"in3"},"holes":%d,"ascentSpeed":{"value":0,"unit":"m/s"}}""";
        JsonNode one =
                client.post("/api/checks/vents?units=us", body.formatted(1)).body();
        assertThat(value(one, "diameter")).isCloseTo(0.25, offset(1e-4)); // common practice
        assertThat(one.path("drills").get(0).path("name").asString()).isEqualTo("1/4 in");
        assertThat(one.path("warnings").get(0).path("code").asString()).isEqualTo("single-vent");
        JsonNode four = ok("vents", body.formatted(4));
        assertThat(value(four, "diameter")).isCloseTo(25.4 / 8, offset(0.001));
        assertThat(value(four, "lag")).isZero();
    }

    @Test
    void theWorstLoadOutComesFirst() {
        String two = (ITEMS.formatted("short", 80) + ITEMS.formatted("long", 450)).replace("][", ",");
        JsonNode outs = ok(
                        "fit",
                        "{\"cavity\":" + TUBE + ",\"pushedIn\":{\"value\":100,\"unit\":\"mm\"},\"loadOuts\":" + two
                                + "}")
                .path("loadOuts");
        assertThat(outs.get(0).path("name").asString()).isEqualTo("long");
        assertThat(outs.get(0).path("fit").path("fits").asBoolean()).isFalse();
        assertThat(value(outs.get(0).path("fit"), "lengthLeft")).isCloseTo(500 - 100 - 450, offset(0.01));
        assertThat(outs.get(1).path("fit").path("fits").asBoolean()).isTrue();
        assertThat(value(outs.get(1).path("fit"), "lengthLeft")).isCloseTo(500 - 100 - 80, offset(0.01));
    }

    @Test
    void aDeeperBayLeavesLessAndTheOtherSideTakesWhatRoomItHas() {
        JsonNode answer = ok(
                "insertion",
                "{\"setup\":" + Samples.SETUP
                        + ",\"from\":{\"value\":0,\"unit\":\"mm\"},\"to\":{\"value\":120,\"unit\":\"mm\"},\"steps\":7,"
                        + "\"other\":{\"setup\":" + BOOSTER + ",\"loadOuts\":" + ITEMS.formatted("long", 380) + "}}");
        assertThat(answer.path("rows")).hasSize(7);
        double last = Double.MAX_VALUE;
        for (JsonNode row : answer.path("rows")) {
            boolean fits = row.path("fits").asBoolean();
            assertThat(row.has("freeVolume")).isEqualTo(fits);
            assertThat(row.has("handbookCharge")).isEqualTo(fits);
            assertThat(row.has("why")).isEqualTo(!fits);
            assertThat(fits).as(row.toString()).isEqualTo(value(row, "depth") < 62);
            last = fits ? lessThan(last, row) : last;
        }
        JsonNode shift = answer.path("shift");
        // 500 - 100 - 380 = 20 mm of room; the bay reaches 45 mm into the nose.
        assertThat(value(shift, "room")).isCloseTo(20, offset(0.01));
        assertThat(value(shift, "farthest")).isCloseTo(20, offset(0.01));
        // The booster's tube loses pi/4 * (10 cm)^2 * 2 cm of (50 - 10) cm.
        assertThat(value(shift.path("there"), "freeVolume")).isCloseTo(Math.PI / 4 * 100 * 38 / 1000, offset(0.001));
        assertThat(answer.path("cautions")).isNotEmpty();
    }

    private static double lessThan(double before, JsonNode row) {
        assertThat(value(row, "freeVolume")).isLessThan(before);
        return value(row, "freeVolume");
    }

    @Test
    void speedsComeFromFramesOrFromAThrow() {
        JsonNode film = ok("speed", """
                {"video":{"distance":{"value":300,"unit":"mm"},"frames":6,"framesPerSecond":240},
                 "harness":{"forwardMass":{"value":1,"unit":"kg"},"aftMass":{"value":1,"unit":"kg"},"stretch":{"value":0.5,"unit":"m"}}}""");
        assertThat(value(film, "speed")).isCloseTo(12, offset(1e-9)); // 0.3 m in 6/240 s
        // 5 % of the length and 0.41 of 6 frames, in squares.
        assertThat(film.path("speedUncertaintyPercent").decimalValue()).isEqualByComparingTo("8.5");
        // reduced mass 0.5 kg: 0.5 * 0.5 * 144 = 36 J; spring: 2 * 36 / 0.5 = 144 N
        assertThat(film.path("shock").path("energyJoules").asDouble()).isCloseTo(36, offset(0.01));
        assertThat(value(film.path("shock"), "peakLoad")).isCloseTo(144, offset(0.1));
        // From half of g (standard gravity) a body falls in one second.
        JsonNode thrown = ok("speed", """
                {"thrown":{"distance":{"value":10,"unit":"m"},"height":{"value":4.903325,"unit":"m"}}}""");
        assertThat(value(thrown, "speed")).isCloseTo(10, offset(0.001));
    }

    @Test
    void answersInUsUnitsWhereAsked() {
        JsonNode answer = client.post("/api/checks/volume?units=us", "{\"cavity\":" + TUBE + "}")
                .body();
        assertThat(answer.path("freeVolume").path("unit").asString()).isEqualTo("in3");
        assertThat(value(answer, "freeVolume")).isCloseTo(3926.99 / 16.387064, offset(0.05));
        var odd = client.post("/api/checks/volume?units=imperial", "{\"cavity\":" + TUBE + "}");
        assertThat(odd.status()).isEqualTo(400);
        assertThat(odd.fault("units").path("allowed").asString()).isEqualTo("metric, us");
    }

    static Stream<Arguments> bad() {
        String nose = Samples.SETUP;
        String depths = ",\"from\":{\"value\":%s,\"unit\":\"mm\"},\"to\":{\"value\":%s,\"unit\":\"mm\"}}";
        return Stream.of(
                Arguments.of("volume", "{\"cavity\":[]}", 400, "/cavity"),
                Arguments.of("volume", "{\"cavity\":" + TUBE.replace("500", "-500") + "}", 422, "/cavity/0/length"),
                Arguments.of(
                        "volume",
                        "{\"cavity\":" + TUBE.replace("\"innerDiameter\"", "\"baseDiameter\"") + "}",
                        422,
                        "/cavity/0/innerDiameter"),
                Arguments.of(
                        "volume",
                        "{\"cavity\":" + TUBE
                                + ",\"contents\":[{\"name\":\"a\",\"kind\":\"solid\",\"volume\":{\"value\":9,\"unit\":\"L\"}}]}",
                        422,
                        "/contents/0"),
                Arguments.of("retention", "{}", 422, "/pins"),
                Arguments.of("retention", "{\"pins\":[{\"thread\":\"M99\",\"count\":2}]}", 422, "/pins/0/thread"),
                Arguments.of(
                        "retention",
                        "{\"pins\":[{\"thread\":\"M3\",\"count\":2,\"batch\":\"01890000-0000-7000-8000-000000000000\"}]}",
                        422,
                        "/pins/0/batch"),
                Arguments.of("retention", "{\"fitForce\":{\"value\":-4,\"unit\":\"N\"}}", 422, "/fitForce"),
                Arguments.of(
                        "retention",
                        "{\"fitForce\":{\"value\":40,\"unit\":\"N\"},\"shoulder\":{\"value\":4,\"unit\":\"cm\"}}",
                        422,
                        "/innerDiameter"),
                Arguments.of("pins-in-flight", "{\"setup\":" + nose + ",\"flight\":{},\"margin\":0.5}", 400, "/margin"),
                Arguments.of(
                        "pins-in-flight",
                        "{\"setup\":" + nose.replace("\"shoulder\"", "\"powder\":\"none\",\"shoulder\"")
                                + ",\"flight\":{}}",
                        422,
                        "/setup/powder"),
                Arguments.of(
                        "pins-in-flight",
                        "{\"setup\":" + nose
                                + ",\"flight\":{\"climb\":{\"siteElevation\":{\"value\":1200,\"unit\":\"m\"},\"eventAltitude\":{\"value\":300,\"unit\":\"m\"}}}}",
                        422,
                        "/flight/climb/eventAltitude"),
                Arguments.of(
                        "pins-in-flight",
                        "{\"setup\":" + nose
                                + ",\"flight\":{\"drag\":{\"forward\":{\"value\":-1,\"unit\":\"N\"},\"aft\":{\"value\":1,\"unit\":\"N\"}}}}",
                        422,
                        "/flight/drag/forward"),
                Arguments.of(
                        "vents",
                        "{\"bayVolume\":{\"value\":1,\"unit\":\"L\"},\"holes\":2,\"ascentSpeed\":{\"value\":1,\"unit\":\"m/s\"}}",
                        422,
                        "/holes"),
                Arguments.of(
                        "vents",
                        "{\"bayVolume\":{\"value\":-1,\"unit\":\"L\"},\"ascentSpeed\":{\"value\":-1,\"unit\":\"m/s\"}}",
                        422,
                        "/bayVolume"),
                Arguments.of(
                        "fit",
                        "{\"cavity\":" + TUBE + ",\"loadOuts\":" + ITEMS.formatted("a", -80) + "}",
                        422,
                        "/loadOuts/0/items/0/length"),
                Arguments.of(
                        "fit",
                        "{\"cavity\":" + TUBE + ",\"pushedIn\":{\"value\":900,\"unit\":\"mm\"},\"loadOuts\":"
                                + ITEMS.formatted("a", 80) + "}",
                        422,
                        "/pushedIn"),
                Arguments.of("insertion", "{\"setup\":" + nose + depths.formatted("-1", "50"), 422, "/from"),
                Arguments.of(
                        "insertion",
                        "{\"setup\":" + nose.replace("\"value\":45", "\"value\":150") + depths.formatted("0", "50"),
                        422,
                        "/setup/contents/0/depth"),
                Arguments.of("insertion", "{\"setup\":" + nose + depths.formatted("50", "50"), 422, "/to"),
                Arguments.of(
                        "insertion", "{\"setup\":" + nose + ",\"bay\":1" + depths.formatted("1", "50"), 422, "/bay"),
                Arguments.of("speed", "{}", 400, ""),
                Arguments.of(
                        "speed",
                        "{\"video\":{\"distance\":{\"value\":1,\"unit\":\"m\"},\"frames\":0,\"framesPerSecond\":240}}",
                        422,
                        "/video/frames"),
                Arguments.of(
                        "speed",
                        "{\"thrown\":{\"distance\":{\"value\":1,\"unit\":\"m\"},\"height\":{\"value\":1,\"unit\":\"m\"}},"
                                + "\"harness\":{\"forwardMass\":{\"value\":-1,\"unit\":\"kg\"},\"aftMass\":{\"value\":1,\"unit\":\"kg\"},\"stretch\":{\"value\":1,\"unit\":\"m\"}}}",
                        422,
                        "/harness/forwardMass"));
    }

    @ParameterizedTest
    @MethodSource("bad")
    void aBadQuestionIsRefusedByName(String check, String body, int status, String pointer) {
        var answer = client.post("/api/checks/" + check, body);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(status);
        assertThat(answer.fault(pointer).path("detail").asString(""))
                .as(answer.raw().body())
                .isNotEmpty();
        assertThat(answer.fault(pointer).path("allowed").asString("")).isNotEmpty();
    }

    private JsonNode ok(String check, String body) {
        var answer = client.post("/api/checks/" + check, body);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(200);
        return answer.body();
    }

    private static double value(JsonNode node, String field) {
        return node.path(field).path("value").asDouble();
    }

    private static double force(JsonNode answer, String kind) {
        for (JsonNode load : answer.path("loads")) {
            if (load.path("kind").asString().equals(kind)) {
                return value(load, "force");
            }
        }
        throw new AssertionError("no load " + kind);
    }
}
