package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** The numbers of every reason are those of the posterior that the step rests on. */
class ReasonsTest {

    private final Map<Reason.Code, Integer> met = new EnumMap<>(Reason.Code.class);

    @Test
    void everyReasonHasTheNumbersOfThePosterior() {
        for (Cases.Kind kind : Cases.Kind.values()) {
            for (long seed = 0; seed < 12; seed++) {
                check(Cases.random(kind, new Random(seed)), 2);
            }
        }
        check(Cases.of(), 2);
        check(guarded(), 0);
        check(Cases.of(3 * Cases.HANDBOOK, 0.002, List.of(Cases.firing(1.9, Outcome.NONE, false))), 0);
        assertThat(met.keySet())
                .contains(
                        Reason.Code.FIRST_TEST,
                        Reason.Code.FIRST_TEST_OF_SETUP,
                        Reason.Code.UP_AFTER_NONE,
                        Reason.Code.UP_AFTER_PARTIAL,
                        Reason.Code.DOWN_AFTER_SEPARATED,
                        Reason.Code.SAME_AGAIN,
                        Reason.Code.SAME_AFTER_SURPRISE,
                        Reason.Code.CONFIRM,
                        Reason.Code.STOP,
                        Reason.Code.CHANGE_SETUP,
                        Reason.Code.STATE_LIMIT);
    }

    private static PlanningCase guarded() {
        PlanningCase on = Cases.of(0.8 * Cases.HANDBOOK, 0.00005, List.of());
        return new PlanningCase(
                on.posterior(),
                on.handbookCharge(),
                on.handbookPressure(),
                on.ceiling(),
                on.measureStep(),
                on.firings(),
                false,
                false,
                on.goal(),
                false);
    }

    private void check(PlanningCase on, int depth) {
        NextStep step = Planner.ladder(on, 0);
        met.merge(step.reason().code(), 1, Integer::sum);
        check(on, step);
        if (depth > 0 && step instanceof NextStep.Fire fire) {
            for (Outcome outcome : Outcome.values()) {
                check(on.after(fire.steps(), outcome), depth - 1);
            }
        }
    }

    private static void check(PlanningCase on, NextStep step) {
        Reason reason = step.reason();
        LeafPosterior posterior = on.posterior();
        Double charge = reason.charges().get("charge");
        if (charge != null && reason.numbers().containsKey("chance")) {
            is(reason, "chance", posterior.pSeparated(ratio(on, charge)));
        }
        if (step instanceof NextStep.Fire fire && charge != null) {
            assertThat(charge).isEqualTo(fire.charge());
        }
        List<Firing> counted = new ArrayList<>(on.counted());
        switch (reason.code()) {
            case FIRST_TEST -> {
                assertThat(counted).isEmpty();
                is(reason, "factor", posterior.correctionFactor().median());
                assertThat(reason.numbers().get("chance"))
                        .isLessThanOrEqualTo(reason.numbers().get("most"));
            }
            case UP_AFTER_NONE, UP_AFTER_PARTIAL, DOWN_AFTER_SEPARATED, SAME_AGAIN -> {
                double fired = counted.get(counted.size() - 1).charge();
                assertThat(reason.charges()).containsEntry("fired", fired);
                is(reason, "saves", 1 - charge / fired);
                assertThat(charge)
                        .isLessThanOrEqualTo(Math.max(fired, reason.charges().get("largest")) * (1 + 1e-9));
            }
            case SAME_AFTER_SURPRISE ->
                assertThat(reason.charges())
                        .containsEntry("fired", counted.get(counted.size() - 1).charge());
            case CONFIRM -> {
                assertThat(reason.numbers().get("chance"))
                        .isGreaterThanOrEqualTo(on.goal().reliability());
                Double separated = reason.charges().get("separated");
                if (separated != null) {
                    is(reason, "separatedFails", 1 - posterior.pSeparated(ratio(on, separated)));
                }
            }
            case STOP, STOP_AS_TESTED -> {
                double own = posterior.ownLogRatioQuantile(0.5, on.goal().reliability());
                double smallest = posterior.logRatioFor(on.goal().reliability());
                double flown = reason.code() == Reason.Code.STOP ? smallest : ratio(on, charge);
                is(reason, "excess", Math.exp(flown - own));
            }
            case CHANGE_SETUP, STATE_LIMIT -> {
                double needed = on.handbookCharge()
                        * Math.exp(posterior.logRatioFor(on.goal().reliability()));
                assertThat(reason.charges().get("needed")).isCloseTo(needed, within(1e-9 * needed));
            }
            default -> {}
        }
    }

    private static double ratio(PlanningCase on, double charge) {
        return Math.log(charge / on.handbookCharge());
    }

    private static void is(Reason reason, String name, double expected) {
        assertThat(reason.numbers().get(name)).as(reason.code() + " " + name).isCloseTo(expected, within(1e-6));
    }
}
