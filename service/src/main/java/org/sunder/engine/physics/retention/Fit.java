package org.sunder.engine.physics.retention;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Force;

/**
 * Friction of the joint's fit, as a pull force.
 *
 * @param force measured or guessed pull force
 * @param uncertainty its standard deviation, or null for the default
 */
public record Fit(Force force, @Nullable Force uncertainty) {

    private static final double DEFAULT_RELATIVE = 0.5; // of the force: a guess by hand, this project's choice
    private static final double DEFAULT_LEAST = 5; // N, this project's choice

    /** A stated force with the default uncertainty. */
    public static Fit of(Force force) {
        return new Fit(force, null);
    }

    /** Standard deviation in newtons: as stated, else half of the force and at least 5 N. */
    public double sd() {
        return uncertainty == null
                ? Math.max(DEFAULT_LEAST, DEFAULT_RELATIVE * force.newtons())
                : uncertainty.newtons();
    }
}
