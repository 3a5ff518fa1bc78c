package org.sunder.advice;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.flight.FlightAir;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.quantity.Mass;

/**
 * The charge that the tests support for flight.
 *
 * @param charge primary, backup and the two honest numbers
 * @param evidence how far the tests support it
 * @param correction learned factor on the handbook charge
 * @param physics the setup in physics
 * @param ceiling the charge never to be exceeded: that of the ground, or lower by the air of the flight
 * @param air of the flight, or null where it was left out
 * @param measure step of charges
 * @param basis what it rests on
 */
public record FlightReport(
        FlightCharge charge,
        EvidenceReport evidence,
        CorrectionFactor correction,
        JointPhysics physics,
        Ceiling ceiling,
        @Nullable FlightAir air,
        Mass measure,
        Basis basis) {}
