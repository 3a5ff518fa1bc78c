package org.sunder.engine.learning.model;

import org.jspecify.annotations.Nullable;

/**
 * One counted firing, in the one number that makes firings of different setups comparable.
 *
 * @param logRatio x = ln(charge / handbook charge of the setup fired), dimensionless, finite
 * @param outcome what the firing did
 * @param speed the measured speed of a separation, if there is one
 */
public record Trial(
        double logRatio, Outcome outcome, @Nullable SpeedReading speed) {

    public Trial {
        if (!Double.isFinite(logRatio)) {
            throw new IllegalArgumentException("the log ratio of a trial must be finite, not " + logRatio);
        }
        if (speed != null && outcome != Outcome.SEPARATED) {
            throw new IllegalArgumentException("only a separated trial has a speed");
        }
    }

    /** A trial without a measured speed. */
    public Trial(double logRatio, Outcome outcome) {
        this(logRatio, outcome, null);
    }
}
