package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The worked example is what the program answers now. */
@ServiceTest
class WorkedExampleDocTest {

    private static final Pattern BLOCK = Pattern.compile("(?s)```json\n(.*?)```");
    private static final Pattern ROW = Pattern.compile(
            "\\| \\d \\| ([0-9.]+) g \\| (\\w+) \\| ([0-9.]+) \\(([0-9.]+) – ([0-9.]+)\\) \\| (\\w+)(?: ([0-9.]+) g)? \\|");

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String written = "";
    private String joint = "";

    @BeforeEach
    void itsJoint() throws IOException {
        written = Files.readString(Path.of("docs", "worked-example.md"));
        emptyLog.empty();
        joint = client.joint();
    }

    @Test
    void theWalkGoesAsWritten() {
        List<JsonNode> said = BLOCK.matcher(written)
                .results()
                .map(block -> new JsonMapper().readTree(block.group(1)))
                .toList();
        assertHolds(client.get(joint + "/estimate").body(), said.get(0));
        assertHolds(client.get(joint + "/next-charge").body(), said.get(1));
        List<MatchResult> rows = ROW.matcher(written).results().toList();
        assertThat(rows).hasSize(4);
        int hour = 10;
        for (MatchResult row : rows) {
            client.post(
                    joint + "/ground-tests",
                    Samples.test(row.group(1), row.group(2), "2026-05-03T" + hour++ + ":20:00+01:00"));
            JsonNode next = client.get(joint + "/next-charge").body();
            assertThat(List.of("factor", "low", "high"))
                    .extracting(name -> two(next.at("/correction/" + name).decimalValue()))
                    .containsExactly(row.group(3), row.group(4), row.group(5));
            assertThat(next.path("decision").asString()).isEqualTo(row.group(6));
            if (row.group(7) != null) {
                assertThat(next.at("/charge/value").decimalValue()).isEqualByComparingTo(row.group(7));
            }
        }
        assertHolds(client.get(joint + "/flight-charge").body(), said.get(2));
    }

    @Test
    void theDepthsOfTheBayAreAsWritten() throws IOException {
        String request = Files.readString(Path.of("src/main/resources/openapi/checkInsertion.request.json"));
        JsonNode answer = client.post("/api/checks/insertion", request).body();
        JsonNode said = new JsonMapper()
                .readTree(BLOCK.matcher(written).results().toList().get(3).group(1));
        assertThat(said.path("rows")).isNotEmpty();
        for (JsonNode row : said.path("rows")) {
            JsonNode same = answer.path("rows")
                    .valueStream()
                    .filter(other -> other.at("/depth/value")
                                    .decimalValue()
                                    .compareTo(row.at("/depth/value").decimalValue())
                            == 0)
                    .findFirst()
                    .orElseThrow();
            assertHolds(same, row);
        }
    }

    private static String two(BigDecimal value) {
        return value.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Everything that is written stands in the answer, which may say more. */
    private static void assertHolds(JsonNode answer, JsonNode written) {
        if (written.isObject()) {
            written.propertyStream().forEach(entry -> assertHolds(answer.path(entry.getKey()), entry.getValue()));
        } else if (written.isArray()) {
            assertThat(answer.size()).isEqualTo(written.size());
            for (int i = 0; i < written.size(); i++) {
                assertHolds(answer.path(i), written.path(i));
            }
        } else if (written.isNumber()) {
            assertThat(answer.decimalValue()).isEqualByComparingTo(written.decimalValue());
        } else {
            assertThat(answer).isEqualTo(written);
        }
    }
}
