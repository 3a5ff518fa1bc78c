package org.sunder.engine.planning;

import java.util.List;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;

/** What to do next with a joint. */
public sealed interface NextStep {

    /** Why. */
    Reason reason();

    /**
     * Fire a ground test.
     *
     * @param steps steps of the measure
     * @param charge charge, kg
     * @param reason why
     * @param probabilities chances of its outcomes
     * @param then what would follow each outcome, if no damage is done; empty if not asked for
     */
    record Fire(int steps, double charge, Reason reason, OutcomeProbabilities probabilities, List<Consequence> then)
            implements NextStep {

        public Fire {
            then = List.copyOf(then);
        }
    }

    /**
     * Stop testing; the charge is supported for flight.
     *
     * @param flightCharge the flight charge
     * @param reason why
     */
    record Stop(FlightCharge flightCharge, Reason reason) implements NextStep {}

    /**
     * Change the setup: the target cannot be met with it.
     *
     * @param reason why
     * @param highestCharge highest charge allowed whatever is tested, kg
     * @param chanceAtHighest chance of separating at that charge
     * @param requiredScale factor on the handbook charge at which the target would just be met, if the highest charge
     *     stays as it is
     */
    record ChangeSetup(Reason reason, double highestCharge, double chanceAtHighest, double requiredScale)
            implements NextStep {}

    /**
     * State what the airframe withstands: only the ceiling taken for want of a limit is in the way.
     *
     * @param reason why
     * @param neededCharge charge that the target is likely to need, kg
     * @param defaultCeiling the ceiling taken, kg
     */
    record StateLimit(Reason reason, double neededCharge, double defaultCeiling) implements NextStep {}

    /**
     * What would follow an outcome.
     *
     * @param outcome the outcome
     * @param step what to do then
     */
    record Consequence(Outcome outcome, NextStep step) {}
}
