package org.sunder.engine.planning;

import java.util.List;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.OutcomeProbabilities;

/** What to do next with a joint. */
public sealed interface NextStep {

    /**
     * Fire a ground test.
     *
     * @param steps steps of the measure
     * @param charge charge, kg
     * @param why one plain sentence
     * @param probabilities chances of its outcomes
     * @param then what would follow each outcome, if no damage is done; empty if not asked for
     */
    record Fire(int steps, double charge, String why, OutcomeProbabilities probabilities, List<Consequence> then)
            implements NextStep {

        public Fire {
            then = List.copyOf(then);
        }
    }

    /**
     * Stop testing; the charge is supported for flight.
     *
     * @param flightCharge the flight charge
     */
    record Stop(FlightCharge flightCharge) implements NextStep {}

    /**
     * Change the setup: the target cannot be met with it.
     *
     * @param reason one plain sentence
     * @param highestCharge highest charge allowed whatever is tested, kg
     * @param chanceAtHighest chance of separating at that charge
     * @param requiredScale factor on the handbook charge at which the target would just be met, if the highest charge
     *     stays as it is
     */
    record ChangeSetup(String reason, double highestCharge, double chanceAtHighest, double requiredScale)
            implements NextStep {}

    /**
     * What would follow an outcome.
     *
     * @param outcome the outcome
     * @param step what to do then
     */
    record Consequence(Outcome outcome, NextStep step) {}
}
