package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.Thorough;

/** One rule for digits: a charge on a page, a card or a picture has those of its measure; and nothing counts one of many. */
@ServiceTest
class DigitsTest {

    private static final Pattern CHARGE = Pattern.compile("(?<![\\d.])(\\d+(?:\\.\\d+)?)[ \\u00a0](gr?)(?![\\w/²³])");
    private static final Pattern ODD =
            Pattern.compile("(?<![\\d.,])1 (tests|shots|pins|igniters|pulls|joints|holes|firings"
                    + "|airframes|times|firings)\\b|-\\d[\\d.]* (mm|in|L|mL|in³) |allowed: (a|the) [a-z ]* is needed");

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String measured = "";
    private String airframe = "";
    private final List<String> joints = new ArrayList<>();

    @BeforeEach
    void before() {
        emptyLog.empty();
    }

    @AfterEach
    void after() {
        emptyLog.empty();
    }

    /** Joints before a test, after one, ready to fly, changed since, and with a limit in the way. */
    private void fleet(String value, String unit, String units) {
        measured = Samples.SETUP
                .replace("\"value\":340,\"unit\":\"g\"", "\"value\":0.34,\"unit\":\"kg\"")
                .replace("\"value\":120,\"unit\":\"g\"", "\"value\":0.12,\"unit\":\"kg\"")
                .replace("\"value\":0.05,\"unit\":\"g\"", "\"value\":" + value + ",\"unit\":\"" + unit + "\"");
        airframe = client.post("/api/airframes", Samples.AIRFRAME.replace("metric", units))
                .header("Location");
        for (String name : List.of("untested", "tested once", "to fly", "changed")) {
            joint(name, measured);
        }
        joint("held down", measured.replace("\"value\":300", "\"value\":80"));
        log(joints.get(1), "partial");
        until(joints.get(2));
        until(joints.get(3));
        client.put(joints.get(3) + "/setup", measured.replace("\"count\":3", "\"count\":2"), "If-Match", "\"v0\"");
        String loadOut = Samples.loadOut(joints.get(0).replaceAll(".*/", ""))
                .replace("\"value\":340,\"unit\":\"g\"", "\"value\":0.34,\"unit\":\"kg\"");
        client.post(airframe + "/load-outs", loadOut);
        client.post(airframe + "/load-outs", loadOut.replace("\"value\":180", "\"value\":780"));
    }

    private void joint(String name, String setup) {
        joints.add(client.post(
                        airframe + "/joints", "{\"name\":\"" + name + "\",\"event\":\"main\",\"setup\":" + setup + "}")
                .header("Location"));
    }

    private void until(String joint) {
        for (int i = 0;
                i < 6
                        && client.get(joint + "/next-charge")
                                .body()
                                .path("decision")
                                .asString()
                                .equals("fire");
                i++) {
            log(joint, "separated");
        }
    }

    private void log(String joint, String outcome) {
        var charge = client.get(joint + "/next-charge").body().path("charge");
        var logged = client.post(
                joint + "/ground-tests",
                "{\"charge\":" + charge + ",\"outcome\":\"" + outcome
                        + "\",\"firedAt\":\"2026-05-03T10:20:00+01:00\"}");
        assertThat(logged.status()).as(logged.raw().body()).isEqualTo(201);
    }

    @ParameterizedTest
    @CsvSource({"0.05, g, metric, 2", "0.5, gr, us, 1"})
    void everyChargeHasTheDigitsOfItsMeasure(String value, String unit, String units, int digits) throws Exception {
        assumeTrue(units.equals("metric") || Thorough.on(), "the other units in runs that take their time");
        fleet(value, unit, units);
        Map<String, String> odd = new LinkedHashMap<>();
        int seen = 0;
        for (String path : pages()) {
            String text = words(path);
            var charges = CHARGE.matcher(text);
            while (charges.find()) {
                seen++;
                String number = charges.group(1);
                int point = number.indexOf('.');
                if ((point < 0 ? 0 : number.length() - point - 1) != digits
                        || !charges.group(2).equals(unit)) {
                    odd.put(path + ": " + charges.group(), around(text, charges.start()));
                }
            }
            ODD.matcher(text).results().forEach(m -> odd.put(path + ": " + m.group(), around(text, m.start())));
        }
        for (String path : answers()) {
            var answer = client.get(path);
            for (String text : answer.body().findValuesAsString("text")) {
                ODD.matcher(text).results().forEach(m -> odd.put(path + ": " + m.group(), text));
            }
        }
        assertThat(seen).isGreaterThan(150);
        assertThat(odd).isEmpty();
    }

    private List<String> pages() {
        String page = airframe.replace("/api", "");
        List<String> all = new ArrayList<>(List.of(
                "/", "/fleet", page, page + "/flight-day?site=300&bay=1,2&holes=1&speed=260", page + "/load-outs"));
        for (String joint : joints) {
            all.add(joint.replace("/api", "") + "/plan");
            all.add(joint + "/ladder?depth=4");
            all.add(joint + "/curve");
            all.add(joint + "/ruler");
        }
        return all;
    }

    private List<String> answers() {
        List<String> all = new ArrayList<>(List.of("/api/field-kit", airframe + "/history", airframe + "/fit"));
        for (String joint : joints) {
            all.add(joint + "/next-charge");
            all.add(joint + "/flight-charge");
            all.add(joint + "/estimate");
        }
        return all;
    }

    private String words(String path) throws IOException, InterruptedException {
        String type = path.contains("/curve") || path.contains("/ruler") ? "image/svg+xml" : "text/html";
        var answer = HttpClient.newHttpClient()
                .send(client.request(path, "Accept", type).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body()
                .replaceAll("(?s)<style>.*?</style>|<script.*?</script>", "")
                .replaceAll("</?(strong|span|a|b)\\b[^>]*>", "")
                .replaceAll("<[^>]*>", "|")
                .replace("&#39;", "'");
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 40));
    }
}
