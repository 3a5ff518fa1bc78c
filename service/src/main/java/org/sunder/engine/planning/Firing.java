package org.sunder.engine.planning;

import org.sunder.engine.learning.model.Outcome;

/**
 * A firing of the joint that is planned for.
 *
 * @param charge charge fired, kg
 * @param logRatio ln(charge / handbook charge of the setup fired)
 * @param gaugePressure gauge pressure that the charge gives in the setup fired, Pa
 * @param outcome what it did
 * @param damaged whether it damaged anything
 * @param counted whether it counts as a trial; a void firing still bounds the charge if it did damage
 * @param currentSetup whether it was fired in the current setup or an equivalent one
 * @param ground whether it was a test on the ground; a flight teaches and bounds, but only the ground confirms
 */
public record Firing(
        double charge,
        double logRatio,
        double gaugePressure,
        Outcome outcome,
        boolean damaged,
        boolean counted,
        boolean currentSetup,
        boolean ground) {

    public Firing {
        if (!(charge > 0) || !Double.isFinite(charge + logRatio) || !(gaugePressure > 0)) {
            throw new IllegalArgumentException("a firing has a positive charge and pressure and a finite log ratio");
        }
    }

    /** A test on the ground. */
    public Firing(
            double charge,
            double logRatio,
            double gaugePressure,
            Outcome outcome,
            boolean damaged,
            boolean counted,
            boolean currentSetup) {
        this(charge, logRatio, gaugePressure, outcome, damaged, counted, currentSetup, true);
    }

    boolean separated() {
        return counted && outcome == Outcome.SEPARATED;
    }

    /** Whether it shows on the ground that its charge parts the current setup and breaks nothing. */
    boolean confirms() {
        return separated() && currentSetup && ground && !damaged;
    }
}
