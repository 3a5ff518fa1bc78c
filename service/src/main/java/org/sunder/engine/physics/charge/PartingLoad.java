package org.sunder.engine.physics.charge;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a separation whose speed was measured asked of harness and bulkheads.
 *
 * @param measured relative speed of the parts, m/s
 * @param predicted what the formula says of the charge, m/s
 * @param energy of the parting, which the harness takes: ½·m_r·v² with the reduced mass m_r, J
 * @param leastPressure gauge pressure from which the gas gives that speed without losses, Pa: what the compartment saw was that
 *     or more
 * @param bulkheadForce that pressure on the area of the joint, N
 * @param exceeded the limit that the flyer stated and this passes; null where it passes none
 */
public record PartingLoad(
        double measured,
        double predicted,
        double energy,
        double leastPressure,
        double bulkheadForce,
        @Nullable Limit exceeded) {

    private static final double ROUNDING = 1e-9; // relative

    /**
     * Of a joint on the ground.
     *
     * @param measured relative speed of the parts, m/s
     * @param chargeKg the charge fired, over the correction where one is known
     * @return empty where a mass or the shoulder is not stated
     */
    public static Optional<PartingLoad> of(JointPhysics physics, double measured, double chargeKg) {
        return Separations.find(physics.setup(), physics.freeVolume(), physics.area())
                .map(parting -> {
                    double pressure = physics.gaugePressure(parting.charge(measured));
                    return new PartingLoad(
                            measured,
                            parting.speed(chargeKg),
                            parting.reducedMass() * measured * measured / 2,
                            pressure,
                            pressure * physics.area(),
                            exceeded(physics.setup().limit(), measured, pressure));
                });
    }

    private static @Nullable Limit exceeded(@Nullable Limit stated, double speed, double pressure) {
        boolean passed = stated instanceof Limit.SeparationSpeedLimit limit
                ? speed > limit.speed().metresPerSecond() * (1 + ROUNDING)
                : stated instanceof Limit.GaugePressureLimit structure
                        && pressure > structure.pressure().pascals() * (1 + ROUNDING);
        return passed ? stated : null;
    }
}
