package org.sunder.engine.planning;

import java.util.Optional;
import java.util.OptionalDouble;
import org.sunder.engine.learning.posterior.OneStepLookahead;

/**
 * The charge to fly: the smallest on the grid whose predictive chance of separating reaches the target reliability. Where no
 * separated test stands at or below it, but one a little above, it is that test's charge, if its excess is small enough to
 * stop: a charge seen to separate is flown rather than a smaller one tested again.
 *
 * @param steps its steps of the measure
 * @param logRatio its log ratio
 * @param chance its predictive chance of separating
 * @param excess ln of it over the median of the joint's own charge for that reliability
 */
record Target(int steps, double logRatio, double chance, double excess) {

    /** Log ratios closer than this are of the same charge. */
    static final double ROUNDING = 1e-9;

    static Target of(PlanningCase on) {
        return of(on, new OneStepLookahead(on.posterior(), on.goal().reliability()));
    }

    /** As {@link #of(PlanningCase)}, where the outlook from its posterior is known. */
    static Target of(PlanningCase on, OneStepLookahead outlook) {
        double reliability = on.goal().reliability();
        double x = on.posterior().logRatioFor(reliability, outlook.logRatioFor(reliability));
        int steps = on.stepsReaching(x);
        double chance = on.posterior().pSeparated(on.logRatio(steps));
        if (chance < reliability) {
            steps++;
            chance = on.posterior().pSeparated(on.logRatio(steps));
        }
        double own = on.posterior().ownLogRatioQuantile(0.5, reliability);
        Target smallest = new Target(steps, on.logRatio(steps), chance, x - own);
        return smallest.confirmed(on)
                ? smallest
                : seenToSeparate(on, own)
                        .filter(tested -> tested.settled(on)
                                && Safeguards.checkFlight(on, tested.steps()).isEmpty())
                        .orElse(smallest);
    }

    private static Optional<Target> seenToSeparate(PlanningCase on, double own) {
        OptionalDouble lowest = lowestSeparated(on);
        if (lowest.isEmpty()) {
            return Optional.empty();
        }
        int steps = on.stepsReaching(lowest.getAsDouble());
        double x = on.logRatio(steps);
        return Optional.of(new Target(steps, x, on.posterior().pSeparated(x), x - own));
    }

    /** Lowest log ratio of the counted ground tests of the current setup that separated without damage. */
    static OptionalDouble lowestSeparated(PlanningCase on) {
        return on.firings().stream()
                .filter(Firing::confirms)
                .mapToDouble(Firing::logRatio)
                .min();
    }

    /** Whether the uncertainty left is small enough to stop. */
    boolean settled(PlanningCase on) {
        return excess <= on.goal().excessLimit();
    }

    /** Whether a counted ground test of the current setup separated without damage at this charge's ratio or below. */
    boolean confirmed(PlanningCase on) {
        return lowestSeparated(on).orElse(Double.POSITIVE_INFINITY) <= logRatio + ROUNDING;
    }

    /** What is missing for sufficient evidence, one plain sentence; empty if nothing is. */
    String missing(PlanningCase on) {
        Optional<Rejection> rejection = Safeguards.checkFlight(on, steps);
        if (rejection.isPresent()) {
            return "The charge for the target reliability is not allowed. "
                    + rejection.get().reason();
        }
        if (!settled(on)) {
            return "The charge for the target reliability is still more than the allowed excess above what the joint"
                    + " itself is likely to need.";
        }
        return confirmed(on) ? "" : "No counted test separated at or below the charge for the target reliability.";
    }
}
