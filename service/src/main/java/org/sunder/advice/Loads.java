package org.sunder.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.PartingLoad;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.GroundTest;

/** What separations whose speed was measured asked of harness and bulkheads. */
@Service
public class Loads {

    private final FleetSnapshots fleets;
    private final Advising advising;

    Loads(FleetSnapshots fleets, Advising advising) {
        this.fleets = fleets;
        this.advising = advising;
    }

    /**
     * A separation whose speed was measured.
     *
     * @param test the firing
     * @param physics of the setup it was fired in
     * @param load what it asked
     */
    public record Parting(GroundTest test, JointPhysics physics, PartingLoad load) {

        /**
         * What its harness saw.
         *
         * @param stretch how far the harness lengthens at its limit
         * @throws org.sunder.engine.physics.UnsoundSetupException where no harness stretches so
         */
        public HarnessShock shock(Length stretch) {
            Mass forward = physics.setup().forwardMass();
            Mass aft = physics.setup().aftMass();
            if (forward == null || aft == null) {
                throw new IllegalStateException("a parting has masses");
            }
            return HarnessShock.of(load.measured(), forward, aft, stretch);
        }
    }

    /**
     * The separations of a joint whose speed was measured.
     *
     * @param partings newest first; void ones, and those whose setup states no masses or no shoulder, are left out
     * @param units units that the airframe is shown in
     * @param measure step of charges
     * @param basis what the corrections in it rest on
     */
    public record Measured(List<Parting> partings, UnitSystem units, Mass measure, Basis basis) {

        public Measured {
            partings = List.copyOf(partings);
        }
    }

    /**
     * Those of a joint.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint, 422 where its setup cannot be read
     */
    public Measured at(UUID jointId) {
        JointCase joint = advising.joint(fleets.current(), jointId);
        LoggedJoint logged = joint.logged();
        List<Parting> partings = new ArrayList<>(logged.tests().stream()
                .flatMap(test -> parting(logged, test).stream())
                .toList());
        Collections.reverse(partings);
        return new Measured(partings, logged.airframe().units(), joint.measure(), joint.basis());
    }

    /** By the formula at the charge that does the same without the correction, as that stood after the test. */
    private static Optional<Parting> parting(LoggedJoint joint, GroundTest test) {
        Speed speed = test.report().speed();
        if (speed == null || !joint.counts(test)) {
            return Optional.empty();
        }
        double charge =
                test.report().charge().kilograms() / test.correctionAfter().median();
        return joint.physicsOf(test)
                .flatMap(physics -> PartingLoad.of(physics, speed.metresPerSecond(), charge)
                        .map(load -> new Parting(test, physics, load)));
    }
}
