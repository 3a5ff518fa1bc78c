package org.sunder.advice;

import java.util.Optional;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Mass;

/**
 * The physics of a setup and what the log makes of it.
 *
 * @param physics the setup in physics
 * @param correction learned factor on the handbook charge
 * @param medianCharge charge in kg with an even chance of separating
 * @param targetCharge charge in kg with the target chance
 * @param target the target chance
 * @param separationSpeed speed in m/s at the target charge, where masses and shoulder are known
 * @param measure step of charges
 * @param basis what it rests on
 */
public record Estimate(
        JointPhysics physics,
        CorrectionFactor correction,
        double medianCharge,
        double targetCharge,
        double target,
        Optional<Double> separationSpeed,
        Mass measure,
        Basis basis) {}
