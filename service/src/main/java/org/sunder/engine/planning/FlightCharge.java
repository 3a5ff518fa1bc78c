package org.sunder.engine.planning;

/**
 * A charge supported for flight, with its two honest numbers.
 *
 * @param steps steps of the measure
 * @param charge charge, kg
 * @param modelChance the model's predictive chance of separating
 * @param testsAlone what the tests at this ratio or below show with no model
 * @param backup the second charge
 * @param both what the two are together
 */
public record FlightCharge(
        int steps, double charge, double modelChance, TestsAlone testsAlone, BackupCharge backup, BothCharges both)
        implements FlightAdvice {

    static FlightCharge of(PlanningCase on, Target target) {
        BackupCharge backup = BackupCharge.of(on, target.steps());
        return new FlightCharge(
                target.steps(),
                on.charge(target.steps()),
                target.chance(),
                TestsAlone.upTo(target.logRatio(), on),
                backup,
                BothCharges.of(on, target.steps(), backup.steps()));
    }
}
