package org.sunder.advice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.JointLog;
import org.sunder.engine.learning.SetupLog;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.groundtest.GroundTest;
import org.sunder.problem.ProblemException;

/**
 * A joint with all that was described of it and fired at it.
 *
 * @param airframe its airframe
 * @param joint the joint
 * @param setups its setups in order of revision
 * @param physics what each of them is in physics
 * @param tests its tests in the order they were fired, void ones too
 */
record LoggedJoint(
        Airframe airframe, Joint joint, List<Setup> setups, List<JointPhysics> physics, List<GroundTest> tests) {

    private static final Comparator<GroundTest> FIRED = Comparator.<GroundTest, Instant>comparing(
                    test -> test.report().firedAt().toInstant())
            .thenComparing(test -> test.id().toString());

    LoggedJoint {
        setups = List.copyOf(setups);
        physics = List.copyOf(physics);
        tests = tests.stream().sorted(FIRED).toList();
    }

    /** The setup in force. */
    Setup setup() {
        return setups.get(joint.currentRevision() - 1);
    }

    /**
     * A setup.
     *
     * @param revision its revision, or null for the one in force
     * @throws ProblemException 400 where there is no such revision
     */
    Setup setup(@Nullable Integer revision) {
        if (revision == null) {
            return setup();
        }
        if (revision < 1 || revision > setups.size()) {
            throw ProblemException.invalid(
                    "/setupRevision",
                    revision,
                    "this joint has no such revision",
                    "a revision of the joint's setup, 1 to " + setups.size());
        }
        return setups.get(revision - 1);
    }

    /** What a setup of it is in physics. */
    JointPhysics physics(Setup setup) {
        return physics.get(setup.revision() - 1);
    }

    /** The physics of the setup that a test was fired in. */
    JointPhysics physicsOf(GroundTest test) {
        return physics.get(test.setupRevision() - 1);
    }

    /** How many of its tests are in the fit. */
    int counted() {
        return (int) tests.stream().filter(GroundTest::counted).count();
    }

    /** This joint with one more test, or with a test as it stands now. */
    LoggedJoint with(GroundTest test) {
        UUID id = test.id();
        List<GroundTest> changed = new ArrayList<>(tests);
        changed.removeIf(before -> before.id().equals(id));
        changed.add(test);
        return new LoggedJoint(airframe, joint, setups, physics, changed);
    }

    /** What the engine learns from: the counted trials of each setup. */
    JointLog log() {
        List<SetupLog> logs = new ArrayList<>();
        for (Setup setup : setups) {
            JointPhysics in = physics(setup);
            logs.add(new SetupLog(
                    in.uncertainty().total(),
                    tests.stream()
                            .filter(test -> test.counted() && test.setupRevision() == setup.revision())
                            .map(test -> Trials.of(test.report(), in))
                            .toList()));
        }
        return new JointLog(logs);
    }
}
