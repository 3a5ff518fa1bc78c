package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;

/**
 * The second charge, fired later in time: 1.25 times the first, rounded up on the grid (common practice), within every
 * limit. It may thus lie above anything that the airframe has taken so far.
 *
 * @param steps steps of the measure
 * @param charge charge, kg
 * @param bound whether the ceiling, a damaging test or the model's domain makes it smaller than 1.25 times the first
 * @param highestFired highest charge that a counted firing took without damage, kg; of another setup the charge that gives
 *     the same gauge pressure in this one; 0 where there is none
 * @param proof shots on the ground, in order and in kg, that prove that the airframe takes it, each within the largest step;
 *     empty where it was fired before, or where the measure is too coarse for such a step
 */
public record BackupCharge(int steps, double charge, boolean bound, double highestFired, List<Double> proof) {

    private static final double FACTOR = 1.25;

    public BackupCharge {
        proof = List.copyOf(proof);
    }

    static BackupCharge of(PlanningCase on, int primary) {
        int wanted = on.stepsAtLeast(FACTOR * on.charge(primary));
        int steps = wanted;
        while (steps > primary && Safeguards.checkLimits(on, steps).isPresent()) {
            steps--;
        }
        double fired = highestFired(on);
        return new BackupCharge(
                steps,
                on.charge(steps),
                steps < wanted,
                fired,
                firedBefore(on.charge(steps), fired) ? List.of() : proof(on, steps));
    }

    /** Whether as much was fired without damage. */
    public boolean firedBefore() {
        return firedBefore(charge, highestFired);
    }

    /** How many times the highest charge fired without damage it is; infinite where none was. */
    public double timesFired() {
        return charge / highestFired;
    }

    private static boolean firedBefore(double charge, double fired) {
        return charge <= fired * (1 + Target.ROUNDING);
    }

    private static double highestFired(PlanningCase on) {
        return on.counted().stream()
                .filter(firing -> !firing.damaged())
                .mapToDouble(firing -> firing.currentSetup()
                        ? firing.charge()
                        : on.handbookCharge() * firing.gaugePressure() / on.handbookPressure())
                .max()
                .orElse(0);
    }

    private static List<Double> proof(PlanningCase on, int steps) {
        List<Double> shots = new ArrayList<>();
        double highest = on.handbookCharge()
                * StrictMath.exp(Safeguards.highestUndamaged(on).orElse(Double.NEGATIVE_INFINITY));
        int last = 0;
        while (last < steps) {
            int next = Math.min(steps, on.stepsAtMost(Safeguards.LARGEST_STEP * highest));
            if (next <= last) {
                return List.of();
            }
            shots.add(on.charge(next));
            highest = Math.max(highest, on.charge(next));
            last = next;
        }
        return shots;
    }
}
