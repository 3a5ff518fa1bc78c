package org.sunder.engine.planning;

/**
 * Primary and backup together: what burns if both fire at once, and no more than that where the primary's gas is still
 * inside when the backup fires.
 *
 * @param charge both charges, kg
 * @param gaugePressure gauge pressure that they make by the formula, Pa
 * @param timesThreshold that pressure over the one at which the joint is expected to part
 * @param withinLimits whether ceiling, damaging firings and the model's domain allow as much
 * @param bound the charge that it has to stay below or at, kg: the ceiling, or what did damage
 */
public record BothCharges(
        double charge, double gaugePressure, double timesThreshold, boolean withinLimits, double bound) {

    static BothCharges of(PlanningCase on, int primary, int backup) {
        double ratio = on.charge(primary + backup) / on.handbookCharge();
        return new BothCharges(
                on.charge(primary + backup),
                on.handbookPressure() * ratio,
                ratio,
                Safeguards.checkLimits(on, primary + backup).isEmpty(),
                Safeguards.bound(on));
    }
}
