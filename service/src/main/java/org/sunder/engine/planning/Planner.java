package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Outlook;
import org.sunder.engine.learning.Trial;

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
        Outlook outlook = new Outlook(on.posterior(), on.goal().reliability());
        Target target = Target.of(on, outlook);
        EvidenceReport evidence = EvidenceReport.of(on, target);
        if (evidence.evidence() == Evidence.SUFFICIENT) {
            return new NextStep.Stop(FlightCharge.of(on, target));
        }
        int highest = highestWithinLimits(on);
        if (highest < 1 || ownChance(on, highest) < HOPELESS || outOfReach(on, target, highest)) {
            return changeSetup(
                    on, highest, "The target reliability is not within reach below the highest charge" + " allowed.");
        }
        boolean confirming =
                target.settled(on) && Safeguards.checkTest(on, target.steps()).isEmpty();
        if (confirming) {
            return fire(on, target.steps(), "It is the charge for the target reliability: a confirming test.", depth);
        }
        int top = highestAllowed(on, highest);
        if (target.settled(on)
                && target.steps() > top
                && Safeguards.checkTest(on, top).isEmpty()) {
            return fire(on, top, "It is the largest step towards the charge for the target reliability.", depth);
        }
        OptionalInt best = best(on, candidates(on, top, target, outlook), outlook);
        return best.isPresent()
                ? fire(on, best.getAsInt(), why(on), depth)
                : changeSetup(
                        on,
                        highest,
                        "No charge that the measure can give is both allowed and of use; a finer measure may help.");
    }

    private static String why(PlanningCase on) {
        if (on.counted().isEmpty()) {
            return "It is a first test, with at most a 60 % chance of separating.";
        }
        return on.surpriseUnanswered()
                ? "The last test was a surprise, and this one tells most about what this joint needs."
                : "It tells most about what this joint needs.";
    }

    private static NextStep fire(PlanningCase on, int steps, String why, int depth) {
        List<NextStep.Consequence> then = new ArrayList<>();
        if (depth > 0) {
            for (Outcome outcome : Outcome.values()) {
                then.add(new NextStep.Consequence(outcome, ladder(on.after(steps, outcome), depth - 1)));
            }
        }
        return new NextStep.Fire(steps, on.charge(steps), why, on.posterior().outcomes(on.logRatio(steps)), then);
    }

    private static NextStep changeSetup(PlanningCase on, int highest, String reason) {
        double charge = Math.max(0, on.charge(highest));
        double needed = on.handbookCharge()
                * FastMath.exp(on.posterior().logRatioFor(on.goal().reliability()));
        double chance = highest < 1 ? 0 : on.posterior().pSeparated(on.logRatio(highest));
        return new NextStep.ChangeSetup(reason, charge, chance, charge / needed);
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
        double bound = Math.min(Math.min(on.ceiling(), Safeguards.DOMAIN_LIMIT), Safeguards.damageBound(on));
        int steps = on.stepsAtMost(bound);
        while (steps > 0 && Safeguards.checkLimits(on, steps).isPresent()) {
            steps--;
        }
        return steps;
    }

    /** Allowed charges worth comparing: spread evenly in log ratio, and the target charge if it is allowed. */
    private static List<Integer> candidates(PlanningCase on, int top, Target target, Outlook outlook) {
        double low = on.handbookCharge() * FastMath.exp(outlook.logRatioFor(LEAST_CHANCE));
        double bottom = Math.max(1, Math.min(top, on.stepsAtLeast(Math.max(low, Safeguards.knownToDoNothing(on)))));
        TreeSet<Integer> steps = new TreeSet<>();
        for (int i = 0; i < CANDIDATES; i++) {
            double share = i / (CANDIDATES - 1.0);
            steps.add((int) Math.round(bottom * FastMath.pow(top / bottom, share)));
        }
        steps.add(target.steps());
        int least = on.stepsAtLeast(Safeguards.knownToDoNothing(on));
        return steps.stream()
                .filter(candidate -> candidate >= 1 && candidate >= least && candidate <= top)
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
    private static OptionalInt best(PlanningCase on, List<Integer> candidates, Outlook outlook) {
        return rated(on, candidates, outlook)
                .min(Comparator.comparingDouble(Worth::loss))
                .map(worth -> OptionalInt.of(worth.steps()))
                .orElse(OptionalInt.empty());
    }

    /** What every candidate that all safeguards allow is worth, the smallest first. */
    private static Stream<Worth> rated(PlanningCase on, List<Integer> candidates, Outlook outlook) {
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
        Outlook outlook = new Outlook(on.posterior(), on.goal().reliability());
        return top < 1
                ? List.of()
                : rated(on, candidates(on, top, Target.of(on, outlook), outlook), outlook)
                        .toList();
    }
}
