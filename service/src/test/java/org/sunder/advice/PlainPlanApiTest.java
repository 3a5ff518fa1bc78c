package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;
import org.sunder.Thorough;
import tools.jackson.databind.JsonNode;

/**
 * What a builder sees of the plain plan, over histories driven through the API: in every node of every ladder never less after none or
 * partial, never more after separated but to confirm, and after none at least what follows partial, and that at least what
 * follows separated; after a surprise the same again, unless that order asks for more.
 */
@ServiceTest
class PlainPlanApiTest {

    private static final int HISTORIES = Thorough.count(3, 8, 25);
    private static final int TESTS = 5;
    private static final List<String> OUTCOMES = List.of("none", "partial", "separated");
    private static final BigDecimal FAR_ABOVE = new BigDecimal("2.00");
    private static final BigDecimal STEP = new BigDecimal("0.05");

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private int nodes;
    private int surprises;
    private int stops;

    @BeforeEach
    void nothingTaughtBefore() {
        emptyLog.empty();
    }

    @Test
    void holdsInEveryNodeOfEveryLadder() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            emptyLog.empty();
            history(seed);
        }
        assertThat(nodes).as("nodes looked at").isGreaterThan(HISTORIES * TESTS * 5);
        assertThat(surprises).as("surprises answered by the same again").isPositive();
        assertThat(stops).as("branches that stop").isPositive();
    }

    private void history(int seed) {
        Random random = new Random(seed);
        String joint = client.joint();
        OffsetDateTime fired = OffsetDateTime.parse("2026-05-03T08:00:00+01:00");
        for (int i = 0; i < TESTS; i++) {
            JsonNode ladder = client.get(joint + "/ladder?depth=3").body().path("first");
            down(ladder);
            // Every third history separates twice and then does not part at all far above: that surprises.
            boolean surprising = seed % 3 == 0 && i == 2;
            BigDecimal charge = surprising ? FAR_ABOVE : charge(ladder, random);
            String outcome =
                    surprising ? "none" : seed % 3 == 0 && i < 2 ? "separated" : OUTCOMES.get(random.nextInt(3));
            fired = fired.plusHours(1);
            JsonNode logged = client.post(
                            joint + "/ground-tests",
                            Samples.test(
                                    charge.toPlainString(),
                                    outcome,
                                    fired.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME)))
                    .body();
            JsonNode next = logged.path("next");
            assertThat(next.isObject()).as(logged.toString()).isTrue();
            follows(charge, outcome, next);
            if (logged.path("surprise").isObject()
                    && next.path("decision").asString().equals("fire")) {
                afterASurprise(charge, next);
            }
        }
    }

    /** The same again; more only where the order of outcomes asks for it, because a partial outcome would have led to more. */
    private void afterASurprise(BigDecimal fired, JsonNode next) {
        BigDecimal charge = next.at("/charge/value").decimalValue();
        boolean same = next.at("/reason/code").asString().equals("same-after-surprise");
        surprises += same ? 1 : 0;
        assertThat(same ? charge.compareTo(fired) == 0 : charge.compareTo(fired) > 0)
                .as("after a surprise at " + fired + ": " + next)
                .isTrue();
    }

    /** What the plan says, and now and then something else. */
    private static BigDecimal charge(JsonNode first, Random random) {
        boolean planned = first.path("decision").asString().equals("fire") && random.nextInt(3) > 0;
        return planned
                ? first.at("/charge/value").decimalValue()
                : STEP.multiply(BigDecimal.valueOf(10 + random.nextInt(20)));
    }

    private void down(JsonNode step) {
        nodes++;
        Map<String, Double> after = new HashMap<>();
        for (JsonNode branch : step.path("then")) {
            JsonNode next = branch.path("step");
            follows(
                    step.at("/charge/value").decimalValue(),
                    branch.path("outcome").asString(),
                    next);
            after.put(branch.path("outcome").asString(), height(next));
            down(next);
        }
        if (after.size() == OUTCOMES.size()) {
            assertThat(after.get("none") == 0 || after.get("none") >= after.get("partial"))
                    .as("after none, after partial: " + step)
                    .isTrue();
            assertThat(after.get("partial") == 0 || after.get("partial") >= after.get("separated"))
                    .as("after partial, after separated: " + step)
                    .isTrue();
        }
    }

    private double height(JsonNode step) {
        return switch (step.path("decision").asString()) {
            case "fire" -> step.at("/charge/value").asDouble();
            case "stop" -> {
                stops++;
                yield 0;
            }
            default -> Double.POSITIVE_INFINITY;
        };
    }

    private static void follows(BigDecimal fired, String outcome, JsonNode next) {
        if (!next.path("decision").asString().equals("fire")) {
            return;
        }
        BigDecimal charge = next.at("/charge/value").decimalValue();
        if (outcome.equals("separated")) {
            boolean confirms = next.at("/reason/code").asString().startsWith("confirm");
            assertThat(confirms || charge.compareTo(fired) <= 0)
                    .as("after separated at " + fired + ": " + next)
                    .isTrue();
        } else {
            assertThat(charge).as("after " + outcome + ": " + next).isGreaterThanOrEqualTo(fired);
        }
    }
}
