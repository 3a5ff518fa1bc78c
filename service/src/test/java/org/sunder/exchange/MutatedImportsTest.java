package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Thorough;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Exports changed at random: none is taken in that reading refuses, and none is a failure of ours. */
@KeyedServiceTest
class MutatedImportsTest {

    private static final int FILES = Thorough.count(100, 1000, 5000);

    private static final JsonMapper JSON = new JsonMapper();
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "-1",
            "0",
            "1e308",
            "-1e-300",
            "1E999999999",
            "99999999999999999999999999999999",
            "\"\"",
            "\"1E999999999\"",
            "\"-5\"",
            "\"0\"",
            "\"NaN\"",
            "\"98.5\"",
            "\"g\"",
            "\"ft\"",
            "\"none\"",
            "\"nul \\u0000 here\"",
            "\"half \\ud83d a pair\"",
            "\"😀 \\u202e <script>alert(1)</script>\"",
            "\"-999999999-01-01T00:00:00Z\"",
            "\"2200-01-01T00:00:00Z\"",
            "\"1700-01-01T00:00:00Z\"",
            "\"01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e\"",
            "[]",
            "{}",
            "{\"innerDiameter\":{\"value\":1e999999999,\"unit\":\"mm\"}}");

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Test
    void noneIsTakenInThatReadingRefusesAndNoneIsAFailureOfOurs() {
        String export = SmallFleet.exported(flyer());
        Random random = new Random(20261126);
        int taken = 0;
        int refused = 0;
        Client other = flyer();
        for (int i = 0; i < FILES; i++) {
            String changed = changed(export, random);
            var answer = other.post("/api/import", changed);
            assertThat(answer.status()).as(changed + "\n" + answer.raw().body()).isLessThan(500);
            if (answer.status() == 200) {
                taken++;
                readsAsATakenFleetDoes(other, changed);
                other = flyer();
            } else {
                refused++;
                assertThat(answer.raw().body()).doesNotContain("Exception").doesNotContain("org.sunder");
            }
        }
        assertThat(taken).as("taken in").isGreaterThan(FILES / 50);
        assertThat(refused).as("refused").isGreaterThan(FILES / 2);
    }

    private static void readsAsATakenFleetDoes(Client flyer, String changed) {
        List<String> paths = new ArrayList<>(List.of("/api/field-kit?depth=0", "/api/export"));
        JsonNode rows = JSON.readTree(flyer.get("/api/export").raw().body());
        rows.path("joints").forEach(joint -> {
            String at = "/api/joints/" + joint.path("id").asString();
            paths.addAll(List.of(at, at + "/next-charge", at + "/estimate", at + "/ground-tests", at + "/setups"));
        });
        rows.path("airframes")
                .forEach(airframe ->
                        paths.add("/api/airframes/" + airframe.path("id").asString() + "/history"));
        for (String path : paths) {
            var read = flyer.get(path);
            assertThat(read.status())
                    .as(path + " of " + changed + "\n" + read.raw().body())
                    .isEqualTo(200);
            assertThat(read.raw().body()).as(path + " of " + changed).doesNotContain("\"finding\"");
        }
    }

    private static String changed(String export, Random random) {
        if (random.nextInt(20) == 0) {
            return export.substring(0, random.nextInt(export.length()));
        }
        ObjectNode all = (ObjectNode) JSON.readTree(export);
        int changes = 1 + random.nextInt(2);
        for (int i = 0; i < changes; i++) {
            change(all, random);
        }
        String text = all.toString().replaceAll("\"@@(1E9+)\"", "$1");
        return random.nextInt(8) == 0 ? digits(text, random) : text;
    }

    /** One row dropped, repeated or changed in one field; now and then a field of the document itself. */
    private static void change(ObjectNode all, Random random) {
        List<String> fields = new ArrayList<>(all.propertyNames());
        String field = fields.get(random.nextInt(fields.size()));
        if (!(all.get(field) instanceof ArrayNode rows) || rows.isEmpty() || random.nextInt(25) == 0) {
            all.set(field, value(random));
            return;
        }
        int row = random.nextInt(rows.size());
        switch (random.nextInt(10)) {
            case 0 -> rows.remove(row);
            case 1 -> rows.add(rows.get(row).deepCopy());
            default -> changeField((ObjectNode) rows.get(row), random);
        }
    }

    private static void changeField(ObjectNode row, Random random) {
        List<String> names = new ArrayList<>(row.propertyNames());
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(8)) {
            case 0 -> row.remove(name);
            case 1 -> row.set(name + "x", row.get(name));
            default -> row.set(name, random.nextBoolean() ? value(random) : near(row.get(name), random));
        }
    }

    /** Something like it, which may well be sound. */
    private static JsonNode near(JsonNode value, Random random) {
        if (value.isNumber()) {
            return JSON.valueToTree(value.decimalValue().add(BigDecimal.valueOf(random.nextInt(3) - 1)));
        }
        if (value.isBoolean()) {
            return JSON.readTree(String.valueOf(!value.asBoolean()));
        }
        String text = value.asString("");
        boolean digits = text.matches("-?[0-9]+(\\.[0-9]+)?");
        return JSON.valueToTree(digits ? text + random.nextInt(10) : text + "x");
    }

    private static JsonNode value(Random random) {
        String text = VALUES.get(random.nextInt(VALUES.size()));
        // A number too large to be read is put in as text, and made one again below.
        return text.startsWith("1E9") ? JSON.readTree("\"@@" + text + "\"") : JSON.readTree(text);
    }

    /** One digit changed anywhere, in nested documents too. */
    private static String digits(String text, Random random) {
        int at = random.nextInt(text.length());
        while (!Character.isDigit(text.charAt(at))) {
            at = (at + 1) % text.length();
        }
        return text.substring(0, at) + random.nextInt(10) + text.substring(at + 1);
    }

    private Client flyer() {
        return client.with(keys.issue(flyers.enter("someone").id(), "test", Scope.FULL, null)
                .secret());
    }
}
