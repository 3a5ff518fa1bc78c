package org.sunder.engine.learning.posterior;

import org.sunder.engine.learning.model.Outcome;

/**
 * The chances of the three outcomes; they add to 1.
 *
 * @param none the joint does not part
 * @param partial it parts only partially
 * @param separated it separates
 */
public record OutcomeProbabilities(double none, double partial, double separated) {

    /** The chance of one outcome. */
    public double of(Outcome outcome) {
        return switch (outcome) {
            case NONE -> none;
            case PARTIAL -> partial;
            case SEPARATED -> separated;
        };
    }
}
