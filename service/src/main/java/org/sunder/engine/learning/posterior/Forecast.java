package org.sunder.engine.learning.posterior;

import org.sunder.engine.learning.model.Outcome;

/**
 * What one outcome of a firing would leave behind.
 *
 * @param outcome the outcome
 * @param probability its chance before the firing
 * @param logRatio the log ratio for the target reliability after it
 * @param ownMedian the median of the joint's own log ratio for that reliability after it
 */
public record Forecast(Outcome outcome, double probability, double logRatio, double ownMedian) {

    /** How much the target log ratio exceeds the joint's own, for want of knowledge. */
    public double excess() {
        return logRatio - ownMedian;
    }
}
