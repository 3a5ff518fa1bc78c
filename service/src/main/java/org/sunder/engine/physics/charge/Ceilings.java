package org.sunder.engine.physics.charge;

import org.sunder.engine.physics.SetupBounds;

/** The ceiling of a setup: the flyer's limit, else three times the threshold, and never beyond the model's domain. */
public final class Ceilings {

    private static final double DEFAULT_MULTIPLE = 3; // of the threshold pressure, this project's choice

    private Ceilings() {}

    /** On the ground. */
    public static Ceiling of(JointSetup setup, double freeVolume, double area, double threshold) {
        return of(setup, freeVolume, area, threshold, Separations.SEA_LEVEL, Separations.SEA_LEVEL);
    }

    /**
     * In air of a pressure outside, with a pressure inside before firing. What the trapped air already exerts is taken off
     * the charge.
     */
    public static Ceiling of(
            JointSetup setup, double freeVolume, double area, double threshold, double outside, double inside) {
        double perPascal = freeVolume / JointPhysics.powderForce(setup);
        double trapped = Math.max(0, inside - outside);
        Ceiling stated;
        if (setup.limit() instanceof Limit.SeparationSpeedLimit limit) {
            double charge = Separations.find(setup, freeVolume, area, outside, inside)
                    .orElseThrow()
                    .charge(limit.speed().metresPerSecond());
            stated = new Ceiling(charge, CeilingSource.SEPARATION_SPEED_LIMIT);
        } else {
            stated = ofPressure(setup, threshold, trapped, perPascal);
        }
        double pressure = Math.max(0, SetupBounds.DOMAIN_PRESSURE - trapped) * perPascal;
        double domain = Math.min(SetupBounds.DOMAIN_CHARGE, pressure);
        return stated.chargeKg() <= domain ? stated : new Ceiling(domain, CeilingSource.MODEL_DOMAIN);
    }

    private static Ceiling ofPressure(JointSetup setup, double threshold, double trapped, double perPascal) {
        boolean limited = setup.limit() instanceof Limit.GaugePressureLimit;
        double allowed = setup.limit() instanceof Limit.GaugePressureLimit limit
                ? limit.pressure().pascals()
                : DEFAULT_MULTIPLE * threshold;
        return new Ceiling(
                Math.max(0, allowed - trapped) * perPascal,
                limited ? CeilingSource.STRUCTURAL_LIMIT : CeilingSource.DEFAULT_THREE_TIMES_THRESHOLD);
    }
}
