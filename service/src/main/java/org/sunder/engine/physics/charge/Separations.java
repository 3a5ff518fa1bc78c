package org.sunder.engine.physics.charge;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;

/** Sets up the separation of a joint from what the flyer stated. */
public final class Separations {

    static final double SEA_LEVEL = 101_325; // Pa, ISO 2533:1975

    private Separations() {}

    /** Empty where a mass or the shoulder is not stated. Pressures in Pa outside, and inside before firing. */
    public static Optional<Separation> find(
            JointSetup setup, double freeVolume, double area, double outside, double inside) {
        @Nullable Mass forward = setup.forwardMass();
        @Nullable Mass aft = setup.aftMass();
        @Nullable Length shoulder = setup.shoulder();
        if (forward == null || aft == null || shoulder == null) {
            return Optional.empty();
        }
        return Optional.of(new Separation(
                freeVolume,
                area,
                shoulder.metres(),
                setup.fit().force().newtons(),
                reducedMass(forward.kilograms(), aft.kilograms()),
                JointPhysics.powderForce(setup),
                outside,
                inside));
    }

    /** On the ground at sea level. */
    public static Optional<Separation> find(JointSetup setup, double freeVolume, double area) {
        return find(setup, freeVolume, area, SEA_LEVEL, SEA_LEVEL);
    }

    /** m₁m₂/(m₁ + m₂). */
    static double reducedMass(double a, double b) {
        return a * b / (a + b);
    }
}
