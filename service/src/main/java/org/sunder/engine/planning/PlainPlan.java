package org.sunder.engine.planning;

import java.util.List;
import java.util.Optional;
import org.sunder.engine.learning.model.Outcome;

/**
 * What a builder can follow without the model at hand. After none or partial never less than was just fired; after separated
 * never more, unless it is the charge to fly, to confirm it; after a surprise the same again; and from one firing the charge
 * after none is at least that after partial, and that at least that after separated. Each holds for the last counted firing of
 * the current setup that did no damage; a damaging one is bound by the safeguard for damage. The project's own choice.
 */
final class PlainPlan {

    /** What stands for a step that names no charge because none will do. */
    static final int NO_CHARGE = Integer.MAX_VALUE;

    private static final double ROUNDING = 1e-9;

    private PlainPlan() {}

    /** Never less than was just fired without parting the joint fully. */
    static Optional<Rejection> neverLess(PlanningCase on, int steps) {
        return on.last()
                .filter(last -> !last.damaged() && last.outcome() != Outcome.SEPARATED)
                .filter(last -> on.charge(steps) < last.charge() * (1 - ROUNDING))
                .map(last -> new Rejection(
                        "never-less-after-" + last.outcome(),
                        "It is less than " + Safeguards.grams(last.charge()) + ", which was not enough."));
    }

    /** Never more than what just separated, but for the charge to fly once it is settled. */
    static Optional<Rejection> neverMore(PlanningCase on, Target target, int steps) {
        return on.last()
                .filter(last -> last.outcome() == Outcome.SEPARATED)
                .filter(last -> on.charge(steps) > last.charge() * (1 + ROUNDING))
                .filter(last -> !(target.settled(on) && steps == target.steps()))
                .map(last -> new Rejection(
                        "never-more-after-separated",
                        "It is more than " + Safeguards.grams(last.charge()) + ", which separated."));
    }

    /** The charge to fire after a surprise: the same again, on the grid; empty where nothing surprised. */
    static Optional<Integer> sameAgain(PlanningCase on) {
        return on.surpriseUnanswered()
                ? on.last().filter(last -> !last.damaged()).map(last -> again(on, last))
                : Optional.empty();
    }

    private static int again(PlanningCase on, Firing last) {
        return Math.max(
                1,
                last.outcome() == Outcome.SEPARATED ? on.stepsAtMost(last.charge()) : on.stepsAtLeast(last.charge()));
    }

    /**
     * The least that the order of outcomes allows: what the plan names had the last firing parted the joint further.
     *
     * @return steps; 0 where nothing is asked, {@link #NO_CHARGE} where no charge would have done even then
     */
    static int leastInOrder(PlanningCase on) {
        Outcome outcome =
                on.last().filter(last -> !last.damaged()).map(Firing::outcome).orElse(Outcome.SEPARATED);
        if (outcome == Outcome.SEPARATED) {
            return 0;
        }
        int separated = steps(Planner.plan(on.lastInstead(Outcome.SEPARATED), 0, 0));
        return outcome == Outcome.PARTIAL
                ? separated
                : Math.max(separated, steps(Planner.plan(on.lastInstead(Outcome.PARTIAL), separated, 0)));
    }

    /** Steps of the charge that a step fires: 0 for a stop, which fires nothing more. */
    static int steps(NextStep step) {
        if (step instanceof NextStep.Fire fire) {
            return fire.steps();
        }
        return step instanceof NextStep.Stop ? 0 : NO_CHARGE;
    }

    /** Outcomes in the order in which what follows them is planned. */
    static List<Outcome> order() {
        return List.of(Outcome.SEPARATED, Outcome.PARTIAL, Outcome.NONE);
    }
}
