package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.Surprise;

/** The ladder agrees with the planner it rolls forward. */
class LadderTest {

    /** Each rung against the planner asked about a fleet whose log holds what happened, computed from the start. */
    @Test
    void everyRungIsWhatThePlannerSaysOfTheLogThen() {
        List<Firing> first = List.of(Cases.firing(1.2, Outcome.PARTIAL, false));
        assertThat(compared(Ladder.of(logged(first, false), 2).root(), first, false))
                .as("rungs compared")
                .isEqualTo(1 + 3 + 9);
        List<Firing> separated = List.of(
                Cases.firing(1.3, Outcome.SEPARATED, false),
                Cases.firing(1.3, Outcome.SEPARATED, false),
                Cases.firing(1.3, Outcome.SEPARATED, false));
        assertThat(compared(Ladder.of(logged(separated, false), 2).root(), separated, false))
                .isGreaterThan(4);
    }

    private static int compared(NextStep rung, List<Firing> firings, boolean surprise) {
        PlanningCase on = logged(firings, surprise);
        same(rung, Planner.nextCharge(on));
        int rungs = 1;
        if (rung instanceof NextStep.Fire fire) {
            for (NextStep.Consequence consequence : fire.then()) {
                Firing next = Cases.firing(fire.charge() / Cases.HANDBOOK, consequence.outcome(), false);
                List<Firing> more = new ArrayList<>(firings);
                more.add(next);
                boolean surprising = on.posterior().outcomes(next.logRatio()).of(next.outcome()) < Surprise.LIMIT;
                rungs += compared(consequence.step(), more, surprising);
            }
        }
        return rungs;
    }

    private static PlanningCase logged(List<Firing> firings, boolean surprise) {
        List<Trial> trials = firings.stream()
                .map(firing -> new Trial(firing.logRatio(), firing.outcome()))
                .toList();
        AirframeLog airframe = new AirframeLog(List.of(new JointLog(List.of(new SetupLog(0.05, trials)))));
        LeafPosterior posterior = FleetModel.of(new FleetLog(List.of(airframe)), Priors.standard())
                .leaf(new Leaf.Logged(0, 0, 0));
        return new PlanningCase(
                posterior,
                Cases.HANDBOOK,
                Cases.PRESSURE,
                3 * Cases.HANDBOOK,
                0.00005,
                firings,
                surprise,
                false,
                Goal.standard());
    }

    private static void same(NextStep rung, NextStep asked) {
        assertThat(rung).hasSameClassAs(asked);
        if (rung instanceof NextStep.Fire fire && asked instanceof NextStep.Fire other) {
            assertThat(fire.steps()).isEqualTo(other.steps());
            assertThat(fire.reason().code()).isEqualTo(other.reason().code());
            for (Outcome outcome : Outcome.values()) {
                assertThat(fire.probabilities().of(outcome))
                        .isCloseTo(other.probabilities().of(outcome), within(0.002));
            }
        } else if (rung instanceof NextStep.Stop stop && asked instanceof NextStep.Stop other) {
            assertThat(stop.flightCharge().steps())
                    .isEqualTo(other.flightCharge().steps());
            assertThat(stop.flightCharge().testsAlone())
                    .isEqualTo(other.flightCharge().testsAlone());
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
