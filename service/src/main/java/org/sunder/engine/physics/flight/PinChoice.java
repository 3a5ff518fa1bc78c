package org.sunder.engine.physics.flight;

import org.sunder.engine.physics.charge.Ceiling;

/** How many pins a joint needs to hold in flight, and whether a charge may break them. */
public sealed interface PinChoice {

    /** The smallest count that holds. */
    int count();

    /** Charge in kilograms that the formula asks for to break that many strong pins. */
    double chargeKg();

    /** The ceiling with that many pins. */
    Ceiling ceiling();

    /**
     * That count holds in flight, and the charge that breaks it lies below the ceiling.
     *
     * @param count pins
     * @param holdingForce what they surely hold, N
     * @param breakingForce what surely breaks them and the fit, N
     * @param chargeKg kg
     * @param ceiling with that many pins
     */
    record Holds(int count, double holdingForce, double breakingForce, double chargeKg, Ceiling ceiling)
            implements PinChoice {}

    /**
     * No count does both: the smallest that holds needs more than the ceiling, and more pins need more still. Change the
     * setup: vent the compartment, more area, less volume, or less load.
     *
     * @param count the smallest count that holds
     * @param breakingForce what surely breaks them and the fit, N
     * @param chargeKg what that takes, kg
     * @param ceiling with that many pins
     */
    record NoCountDoesBoth(int count, double breakingForce, double chargeKg, Ceiling ceiling) implements PinChoice {}
}
