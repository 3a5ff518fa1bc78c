package org.sunder.engine.learning;

/**
 * One counted firing, in the one number that makes firings of different setups comparable.
 *
 * @param logRatio x = ln(charge / handbook charge of the setup fired), dimensionless, finite
 * @param outcome what the firing did
 */
public record Trial(double logRatio, Outcome outcome) {

    public Trial {
        if (!Double.isFinite(logRatio)) {
            throw new IllegalArgumentException("the log ratio of a trial must be finite, not " + logRatio);
        }
    }
}
