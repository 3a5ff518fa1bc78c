package org.sunder.engine.planning;

/**
 * The second charge, fired later in time: 1.25 times the first, rounded up on the grid (common practice), within every
 * limit.
 *
 * @param steps steps of the measure
 * @param charge charge, kg
 * @param bound whether the ceiling, a damaging test or the model's domain makes it smaller than 1.25 times the first
 */
public record BackupCharge(int steps, double charge, boolean bound) {

    private static final double FACTOR = 1.25;

    static BackupCharge of(PlanningCase on, int primary) {
        int wanted = on.stepsAtLeast(FACTOR * on.charge(primary));
        int steps = wanted;
        while (steps > primary && Safeguards.checkLimits(on, steps).isPresent()) {
            steps--;
        }
        return new BackupCharge(steps, on.charge(steps), steps < wanted);
    }
}
