package org.sunder.engine.physics;

/** The ceiling of a setup: the flyer's limit, else three times the threshold, and never beyond the model's domain. */
final class Ceilings {

    private static final double DEFAULT_MULTIPLE = 3; // of the threshold pressure, this project's choice

    private Ceilings() {}

    static Ceiling of(JointSetup setup, double freeVolume, double area, double threshold) {
        Ceiling stated = stated(setup, freeVolume, area, threshold);
        double perPascal = freeVolume / JointPhysics.powderForce(setup);
        double domain = Math.min(SetupBounds.DOMAIN_CHARGE, SetupBounds.DOMAIN_PRESSURE * perPascal);
        return stated.chargeKg() <= domain ? stated : new Ceiling(domain, CeilingSource.MODEL_DOMAIN);
    }

    private static Ceiling stated(JointSetup setup, double freeVolume, double area, double threshold) {
        double perPascal = freeVolume / JointPhysics.powderForce(setup);
        if (setup.limit() instanceof Limit.GaugePressureLimit limit) {
            return new Ceiling(limit.pressure().pascals() * perPascal, CeilingSource.STRUCTURAL_LIMIT);
        }
        if (setup.limit() instanceof Limit.SeparationSpeedLimit limit) {
            double charge = Separations.find(setup, freeVolume, area)
                    .orElseThrow()
                    .charge(limit.speed().metresPerSecond());
            return new Ceiling(charge, CeilingSource.SEPARATION_SPEED_LIMIT);
        }
        return new Ceiling(DEFAULT_MULTIPLE * threshold * perPascal, CeilingSource.DEFAULT_THREE_TIMES_THRESHOLD);
    }
}
