package org.sunder.engine.planning;

import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.Surprise;

/** The reasons of the steps of a plan, with the planner's own figures. */
final class Reasons {

    private Reasons() {}

    /** Of a charge chosen among those allowed. */
    static Reason step(PlanningCase on, int steps, int top, Target target) {
        double charge = on.charge(steps);
        double chance = on.posterior().pSeparated(on.logRatio(steps));
        Firing last = on.last().orElse(null);
        if (last == null) {
            boolean first = on.counted().isEmpty();
            return Reason.of(first ? Reason.Code.FIRST_TEST : Reason.Code.FIRST_TEST_OF_SETUP)
                    .charge("charge", charge)
                    .charge("largest", on.charge(top))
                    .number("chance", chance)
                    .number("most", Safeguards.FIRST_CHANCE)
                    .number("factor", on.posterior().correctionFactor().median());
        }
        return Reason.of(code(on, last, steps))
                .charge("charge", charge)
                .charge("fired", last.charge())
                .charge("largest", on.charge(top))
                .charge("target", on.charge(target.steps()))
                .number("chance", chance)
                .number("saves", 1 - charge / last.charge());
    }

    private static Reason.Code code(PlanningCase on, Firing last, int steps) {
        if (Math.abs(on.charge(steps) - last.charge()) <= Target.ROUNDING * last.charge()) {
            return Reason.Code.SAME_AGAIN;
        }
        if (last.outcome() == Outcome.SEPARATED || on.charge(steps) < last.charge()) {
            return Reason.Code.DOWN_AFTER_SEPARATED;
        }
        return last.outcome() == Outcome.NONE ? Reason.Code.UP_AFTER_NONE : Reason.Code.UP_AFTER_PARTIAL;
    }

    /** Of the same charge again, because its outcome was hardly expected. */
    static Reason sameAfterSurprise(PlanningCase on) {
        Firing last = on.last().orElseThrow();
        return Reason.of(Reason.Code.SAME_AFTER_SURPRISE)
                .charge("fired", last.charge())
                .number("limit", Surprise.LIMIT)
                .number("chance", on.posterior().pSeparated(last.logRatio()));
    }

    /** Of the charge to fly, to see it separate: what the lowest separated charge would fail in flight, and the target. */
    static Reason confirm(PlanningCase on, Target target) {
        Reason reason = Reason.of(Reason.Code.CONFIRM)
                .charge("charge", on.charge(target.steps()))
                .number("chance", target.chance())
                .number("target", on.goal().reliability());
        return Target.lowestSeparated(on).stream()
                .mapToObj(x -> reason.charge("separated", on.handbookCharge() * StrictMath.exp(x))
                        .number("separatedFails", 1 - on.posterior().pSeparated(x)))
                .findFirst()
                .orElse(reason);
    }

    /** Of the largest step towards the charge to fly. */
    static Reason largestStep(PlanningCase on, int steps, Target target) {
        return Reason.of(Reason.Code.LARGEST_STEP)
                .charge("charge", on.charge(steps))
                .charge("target", on.charge(target.steps()))
                .number("largestStep", Safeguards.LARGEST_STEP)
                .number("chance", on.posterior().pSeparated(on.logRatio(steps)));
    }

    /** Of a stop: what is flown, what separated, and what is left uncertain. */
    static Reason stop(PlanningCase on, Target target) {
        double smallest = on.posterior().logRatioFor(on.goal().reliability());
        boolean asTested = on.charge(target.steps() - 1) > on.handbookCharge() * StrictMath.exp(smallest);
        return Reason.of(asTested ? Reason.Code.STOP_AS_TESTED : Reason.Code.STOP)
                .charge("charge", on.charge(target.steps()))
                .charge("smallest", on.charge(on.stepsReaching(smallest)))
                .charge(
                        "separated",
                        on.handbookCharge()
                                * StrictMath.exp(Target.lowestSeparated(on).orElseThrow()))
                .number("chance", target.chance())
                .number("excess", StrictMath.exp(target.excess()));
    }
}
