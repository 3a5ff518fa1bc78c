package org.sunder.advice;

import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.sunder.engine.learning.posterior.CorrectionFactor;

/** What physics and log say of a joint before anything is fired. */
@Service
public class Estimates {

    /** The chance of separating that a flight charge aims at. */
    public static final double TARGET = 0.99;

    private static final double EVEN = 0.5;

    private final FleetSnapshots fleets;
    private final Advising advising;

    Estimates(FleetSnapshots fleets, Advising advising) {
        this.fleets = fleets;
        this.advising = advising;
    }

    /** The estimate of the setup in force. */
    public Estimate of(UUID jointId) {
        JointCase joint = advising.joint(fleets.current(), jointId);
        CorrectionFactor correction = joint.posterior().correctionFactor();
        double target = joint.charge(joint.posterior().logRatioFor(TARGET));
        Optional<Double> speed = joint.physics().separationSpeed(target / correction.median());
        return new Estimate(
                joint.physics(),
                correction,
                joint.charge(joint.posterior().logRatioFor(EVEN)),
                target,
                TARGET,
                speed,
                joint.measure(),
                joint.basis());
    }
}
