package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.OneStepLookahead;

/**
 * Chooses what to do next: fire, stop, or change the setup.
 *
 * <p>Among the charges that every safeguard allows, the one that minimises the expected ln of the target charge after
 * the test plus the price of the tests still to come; once the excess is small enough, the target charge itself as the
 * confirming test. Deterministic: ties go to the smaller charge.
 */
public final class Planner {

    /** Charges compared; a fine measure offers more than can differ in worth. */
    private static final int CANDIDATES = 12;
    /** Charges less likely to separate than this are not worth a test. */
    private static final double LEAST_CHANCE = 0.05;
    /** Below this chance that the joint's own target charge is within the limits, the setup has to change. */
    private static final double HOPELESS = 0.25;

    /** A target that this many separated tests in a row would not bring within the limits is out of reach. */
    private static final int RUN = 3;

    /** Two charges closer than this in log ratio are as good as the same. */
    private static final double NEAR = 0.10;

    private Planner() {}

    /** What to do next, and what would follow each outcome. */
    public static NextStep nextCharge(PlanningCase on) {
        return ladder(on, 1);
    }

    /**
     * What to do next, rolled forward over outcomes without damage.
     *
     * @param depth how many firings ahead consequences are given; 0 gives none
     */
    public static NextStep ladder(PlanningCase on, int depth) {
        return plan(on, PlainPlan.leastInOrder(on), depth);
    }

    /**
     * The plan, where the order of outcomes is known.
     *
     * @param least what {@link PlainPlan#leastInOrder} gives
     */
    static NextStep plan(PlanningCase on, int least, int depth) {
        OneStepLookahead outlook =
                new OneStepLookahead(on.posterior(), on.goal().reliability(), on.filming());
        Target target = Target.of(on, outlook);
        if (EvidenceReport.of(on, target).evidence() == Evidence.SUFFICIENT) {
            return new NextStep.Stop(FlightCharge.of(on, target), Reasons.stop(on, target));
        }
        int highest = highestWithinLimits(on);
        if (least > highest || highest < 1 || ownChance(on, highest) < HOPELESS || outOfReach(on, target, highest)) {
            return blocked(on, highest, Reason.Code.CHANGE_SETUP);
        }
        Optional<Integer> again = PlainPlan.sameAgain(on)
                .filter(steps ->
                        steps >= least && Safeguards.checkTest(on, steps).isEmpty());
        if (again.isPresent()) {
            return fire(on, again.get(), Reasons.sameAfterSurprise(on), depth);
        }
        if (target.settled(on) && target.steps() >= least && allowed(on, target, target.steps())) {
            return fire(on, target.steps(), Reasons.confirm(on, target), depth);
        }
        int top = highestAllowed(on, highest);
        if (target.settled(on) && target.steps() > top && top >= least && allowed(on, target, top)) {
            return fire(on, top, Reasons.largestStep(on, top, target), depth);
        }
        OptionalInt best = best(on, candidates(on, Math.max(least, 1), top, target, outlook), outlook);
        return best.isPresent()
                ? fire(on, best.getAsInt(), Reasons.step(on, best.getAsInt(), top, target), depth)
                : blocked(on, highest, Reason.Code.FINER_MEASURE);
    }

    private static boolean allowed(PlanningCase on, Target target, int steps) {
        return Safeguards.checkTest(on, steps).isEmpty()
                && PlainPlan.neverMore(on, target, steps).isEmpty();
    }

    private static NextStep fire(PlanningCase on, int steps, Reason reason, int depth) {
        List<NextStep.Consequence> then = new ArrayList<>();
        if (depth > 0) {
            int least = 0;
            for (Outcome outcome : PlainPlan.order()) {
                NextStep step = plan(on.after(steps, outcome), least, depth - 1);
                then.add(0, new NextStep.Consequence(outcome, step));
                least = Math.max(least, PlainPlan.steps(step));
            }
        }
        return new NextStep.Fire(steps, on.charge(steps), reason, on.posterior().outcomes(on.logRatio(steps)), then);
    }

    /** No charge will do: because of a limit that was stated or met, or only of the ceiling taken for want of one. */
    private static NextStep blocked(PlanningCase on, int highest, Reason.Code code) {
        double needed = on.handbookCharge()
                * FastMath.exp(on.posterior().logRatioFor(on.goal().reliability()));
        double charge = Math.max(0, on.charge(highest));
        double chance = highest < 1 ? 0 : on.posterior().pSeparated(on.logRatio(highest));
        boolean guardOnly = !on.limitStated()
                && code == Reason.Code.CHANGE_SETUP
                && on.ceiling() < Math.min(Safeguards.DOMAIN_LIMIT, Safeguards.damageBound(on));
        Reason reason = Reason.of(guardOnly ? Reason.Code.STATE_LIMIT : code)
                .charge("highest", charge)
                .charge("needed", needed)
                .charge("step", on.measureStep())
                .number("chanceAtHighest", chance)
                .number("scale", charge / needed);
        return guardOnly
                ? new NextStep.StateLimit(reason, needed, on.ceiling())
                : new NextStep.ChangeSetup(reason, charge, chance, charge / needed);
    }

    /** Chance that the joint's own charge for the target reliability is at most so many steps. */
    private static double ownChance(PlanningCase on, int steps) {
        return on.posterior().ownLogRatioChance(on.logRatio(steps), on.goal().reliability());
    }

    /** Whether the highest charge was fired, and even a run of separated tests there would not make it the target. */
    private static boolean outOfReach(PlanningCase on, Target target, int highest) {
        double fired = Safeguards.highestUndamaged(on).orElse(Double.NEGATIVE_INFINITY);
        if (target.steps() <= highest || fired < on.logRatio(highest) - NEAR) {
            return false;
        }
        LeafPosterior best = on.posterior();
        for (int i = 0; i < RUN; i++) {
            best = best.after(new Trial(on.logRatio(highest), Outcome.SEPARATED));
        }
        return best.pSeparated(on.logRatio(highest)) < on.goal().reliability();
    }

    /** Most steps that keep to the limits that hold whatever was tested. */
    private static int highestWithinLimits(PlanningCase on) {
        int steps = on.stepsAtMost(Safeguards.bound(on));
        while (steps > 0 && Safeguards.checkLimits(on, steps).isPresent()) {
            steps--;
        }
        return steps;
    }

    /** Allowed charges worth comparing: spread evenly in log ratio, and the target charge if it is allowed. */
    private static List<Integer> candidates(
            PlanningCase on, int least, int top, Target target, OneStepLookahead outlook) {
        double low = on.handbookCharge() * FastMath.exp(outlook.logRatioFor(LEAST_CHANCE));
        double known = Math.max(low, Safeguards.knownToDoNothing(on));
        int last = on.last().map(firing -> on.stepsAtLeast(firing.charge())).orElse(0);
        boolean separated = on.last()
                .filter(firing -> firing.outcome() == Outcome.SEPARATED)
                .isPresent();
        int high = separated ? Math.min(top, last) : top;
        double bottom =
                Math.max(least, Math.min(high, on.stepsAtLeast(separated ? known : Math.max(known, on.charge(last)))));
        TreeSet<Integer> steps = new TreeSet<>();
        for (int i = 0; i < CANDIDATES; i++) {
            double share = i / (CANDIDATES - 1.0);
            steps.add((int) Math.round(bottom * FastMath.pow(high / bottom, share)));
        }
        steps.add(target.steps());
        steps.add(last);
        return steps.stream()
                .filter(candidate -> candidate >= least && candidate <= top)
                .filter(candidate -> PlainPlan.neverMore(on, target, candidate).isEmpty())
                .toList();
    }

    /** Most steps that the first-charge and step rules allow. */
    private static int highestAllowed(PlanningCase on, int highest) {
        double x = Safeguards.highestUndamaged(on).isPresent()
                ? Safeguards.highestUndamaged(on).getAsDouble() + FastMath.log(Safeguards.LARGEST_STEP)
                : on.posterior().logRatioFor(Safeguards.FIRST_CHANCE);
        return Math.min(highest, on.stepsAtMost(on.handbookCharge() * FastMath.exp(x)));
    }

    /** The candidate of least loss; ties go to the smaller charge. */
    private static OptionalInt best(PlanningCase on, List<Integer> candidates, OneStepLookahead outlook) {
        return rated(on, candidates, outlook)
                .min(Comparator.comparingDouble(Worth::loss))
                .map(worth -> OptionalInt.of(worth.steps()))
                .orElse(OptionalInt.empty());
    }

    /** What every candidate that all safeguards allow is worth, the smallest first. */
    private static Stream<Worth> rated(PlanningCase on, List<Integer> candidates, OneStepLookahead outlook) {
        return candidates.stream()
                .filter(steps -> Safeguards.checkTest(on, steps).isEmpty())
                .map(steps -> Worth.of(outlook.after(on.logRatio(steps)), on, steps));
    }

    /**
     * The numbers behind a choice: what each charge compared is expected to lead to, the smallest first; empty where no
     * test is called for or none is allowed.
     */
    public static List<Worth> compared(PlanningCase on) {
        int highest = highestWithinLimits(on);
        int top = highest < 1 ? 0 : highestAllowed(on, highest);
        OneStepLookahead outlook =
                new OneStepLookahead(on.posterior(), on.goal().reliability(), on.filming());
        return top < 1
                ? List.of()
                : rated(
                                on,
                                candidates(
                                        on,
                                        Math.max(PlainPlan.leastInOrder(on), 1),
                                        top,
                                        Target.of(on, outlook),
                                        outlook),
                                outlook)
                        .toList();
    }
}
