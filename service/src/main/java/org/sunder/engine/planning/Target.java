package org.sunder.engine.planning;

import java.util.Optional;
import org.hipparchus.util.FastMath;

/**
 * The smallest charge on the grid whose predictive chance of separating reaches the target.
 *
 * @param steps its steps of the measure
 * @param logRatio its log ratio
 * @param chance its predictive chance of separating
 * @param excess ln of it over the median of the joint's own charge for that reliability
 */
record Target(int steps, double logRatio, double chance, double excess) {

    static Target of(PlanningCase on) {
        double reliability = on.goal().reliability();
        double x = on.posterior().logRatioFor(reliability);
        int steps = Math.max(1, on.stepsAtLeast(on.handbookCharge() * FastMath.exp(x)));
        double chance = on.posterior().pSeparated(on.logRatio(steps));
        if (chance < reliability) {
            steps++;
            chance = on.posterior().pSeparated(on.logRatio(steps));
        }
        double own = on.posterior().ownLogRatioQuantile(0.5, reliability);
        return new Target(steps, on.logRatio(steps), chance, x - own);
    }

    /** Whether the uncertainty left is small enough to stop. */
    boolean settled(PlanningCase on) {
        return excess <= on.goal().excessLimit();
    }

    /** Whether a counted firing of the current setup separated without damage at this charge's ratio or below. */
    boolean confirmed(PlanningCase on) {
        return on.firings().stream()
                .anyMatch(firing -> firing.separated()
                        && firing.currentSetup()
                        && !firing.damaged()
                        && firing.logRatio() <= logRatio + 1e-9);
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
