package org.sunder.engine.learning.posterior;

import org.sunder.engine.learning.model.Trial;

/**
 * How expected an outcome was before it entered the fit.
 *
 * <p>A surprise is answered when its trial is voided, or when the next counted trial is none itself: the model, with
 * the surprise in it, then expects what happens again. So a joint's evidence conflicts exactly as long as its last
 * counted trial is a surprise.
 *
 * @param probability chance that the model gave to the outcome
 */
public record Surprise(double probability) {

    /** An outcome that had less than this chance is a surprise; the project's own choice. */
    public static final double LIMIT = 0.02;

    /** Judges a trial against the posterior without it. */
    public static Surprise of(LeafPosterior before, Trial trial) {
        return new Surprise(before.outcomes(trial.logRatio()).of(trial.outcome()));
    }

    /** Whether the outcome had less than 2 %. */
    public boolean surprising() {
        return probability < LIMIT;
    }
}
