package org.sunder.engine.planning;

import org.sunder.engine.learning.Outcome;

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
 */
public record Firing(
        double charge,
        double logRatio,
        double gaugePressure,
        Outcome outcome,
        boolean damaged,
        boolean counted,
        boolean currentSetup) {

    public Firing {
        if (!(charge > 0) || !Double.isFinite(charge + logRatio) || !(gaugePressure > 0)) {
            throw new IllegalArgumentException("a firing has a positive charge and pressure and a finite log ratio");
        }
    }

    boolean separated() {
        return counted && outcome == Outcome.SEPARATED;
    }
}
