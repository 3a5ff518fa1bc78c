package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.Outcome;

/** The ladder agrees with the planner it rolls forward. */
class LadderTest {

    @Test
    void everyRungIsWhatThePlannerWouldSayThen() {
        PlanningCase on = Cases.of(Cases.firing(1.2, Outcome.PARTIAL, false));
        NextStep.Fire fire = (NextStep.Fire) Ladder.of(on, 2).root();
        for (NextStep.Consequence consequence : fire.then()) {
            PlanningCase then = on.after(fire.steps(), consequence.outcome());
            assertThat(consequence.step()).isEqualTo(Planner.nextCharge(then));
        }
    }

    @Test
    void chancesOfBeingDoneRiseWithTheTestsAndAreThoseOfTheTree() {
        Ladder ladder = Ladder.of(Cases.of(), 3);
        assertThat(ladder.doneAfter()).hasSize(4).isSorted();
        assertThat(ladder.doneAfter().get(0)).isZero();
        NextStep.Fire first = (NextStep.Fire) ladder.root();
        double two = 0;
        for (NextStep.Consequence one : first.then()) {
            double chance = first.probabilities().of(one.outcome());
            if (one.step() instanceof NextStep.Fire second) {
                for (NextStep.Consequence other : second.then()) {
                    boolean stop = other.step() instanceof NextStep.Stop;
                    two += stop ? chance * second.probabilities().of(other.outcome()) : 0;
                }
            }
        }
        assertThat(ladder.doneAfter().get(2) - ladder.doneAfter().get(1)).isCloseTo(two, within(1e-12));
    }

    @Test
    void packingCoversTheTestsAndTheFlight() {
        Firing separated = Cases.firing(1.4, Outcome.SEPARATED, false);
        PlanningCase done = Cases.of(
                Cases.firing(0.9, Outcome.NONE, false),
                Cases.firing(1.1, Outcome.PARTIAL, false),
                Cases.firing(1.3, Outcome.SEPARATED, false),
                separated,
                separated);
        Ladder ladder = Ladder.of(done, 1);
        assertThat(ladder.root()).isInstanceOfSatisfying(NextStep.Stop.class, stop -> {
            double flight =
                    stop.flightCharge().charge() + stop.flightCharge().backup().charge();
            assertThat(ladder.packing().powder()).isCloseTo(1.25 * flight, within(1e-12));
            assertThat(ladder.packing().igniters()).isEqualTo(2);
            assertThat(ladder.doneAfter()).containsExactly(1.0, 1.0);
        });
        Ladder untested = Ladder.of(Cases.of(), 2);
        assertThat(untested.packing().open()).isTrue();
        assertThat(untested.packing().tests()).isEqualTo(3);
    }
}
