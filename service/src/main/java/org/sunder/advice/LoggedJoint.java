package org.sunder.advice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.StoredPhysics;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.groundtest.GroundTest;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * A joint with all that was described of it and fired at it.
 *
 * @param airframe its airframe
 * @param joint the joint
 * @param setups its setups in order of revision
 * @param physics what each of them is in physics, or why it is nothing
 * @param tests its tests in the order they were fired, void ones too
 */
record LoggedJoint(
        Airframe airframe, Joint joint, List<Setup> setups, List<StoredPhysics> physics, List<GroundTest> tests) {

    private static final Comparator<GroundTest> FIRED = Comparator.<GroundTest, Instant>comparing(
                    test -> test.report().firedAt().toInstant())
            .thenComparing(test -> test.id().toString());

    LoggedJoint {
        setups = List.copyOf(setups);
        physics = List.copyOf(physics);
        tests = tests.stream().sorted(FIRED).toList();
    }

    /** Relative standard deviation of a setup that cannot be read; nothing hangs on it, since its tests teach nothing. */
    private static final double UNKNOWN = 0.5;

    /**
     * The setup in force.
     *
     * @throws ProblemException 422 where its row is missing or cannot be read
     */
    Setup setup() {
        return setups.stream()
                .filter(setup -> setup.revision() == joint.currentRevision())
                .findFirst()
                .orElseThrow(() -> new ProblemException(
                        ProblemType.UNSOUND_SETUP,
                        "Revision " + joint.currentRevision() + " of this setup is not in the database."));
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
        return setups.stream()
                .filter(setup -> setup.revision() == revision)
                .findFirst()
                .orElseThrow(() -> ProblemException.invalid(
                        "/setupRevision",
                        revision,
                        "this joint has no such revision",
                        "a revision of the joint's setup, 1 to " + setups.size()));
    }

    /**
     * What a setup of it is in physics.
     *
     * @throws ProblemException 422 where it cannot be read or cannot be
     */
    JointPhysics physics(Setup setup) {
        return stored(setup).required();
    }

    /** The same, or why there is none. */
    StoredPhysics stored(Setup setup) {
        return physics.get(setups.indexOf(setup));
    }

    /** Why nothing can be advised of the setup in force; empty where it is sound. */
    Optional<String> finding() {
        return stored(setup()).finding();
    }

    /** The physics of the setup that a test was fired in; empty where that cannot be read. */
    Optional<JointPhysics> physicsOf(GroundTest test) {
        for (int i = 0; i < setups.size(); i++) {
            if (setups.get(i).id().equals(test.setupId()) && physics.get(i) instanceof StoredPhysics.Sound sound) {
                return Optional.of(sound.physics());
            }
        }
        return Optional.empty();
    }

    /** Its tests but those whose rows break a rule. */
    List<GroundTest> sound() {
        return tests.stream().filter(test -> test.finding() == null).toList();
    }

    /** Whether a test is in the fit: counted, and of a setup that can be read. */
    boolean counts(GroundTest test) {
        return test.counted() && physicsOf(test).isPresent();
    }

    /** How many of its tests are in the fit. */
    int counted() {
        return (int) tests.stream().filter(this::counts).count();
    }

    /** This joint with one more test, or with a test as it stands now. */
    LoggedJoint with(GroundTest test) {
        UUID id = test.id();
        List<GroundTest> changed = new ArrayList<>(tests);
        changed.removeIf(before -> before.id().equals(id));
        changed.add(test);
        return new LoggedJoint(airframe, joint, setups, physics, changed);
    }

    /** This joint as it stands in one of its setups, tests of all of them included. */
    LoggedJoint under(int revision) {
        return new LoggedJoint(airframe, joint.inForce(revision), setups, physics, tests);
    }

    /** This joint as it would be with another setup in force, which is stored nowhere. */
    LoggedJoint tried(Setup setup, JointPhysics itsPhysics) {
        List<Setup> more = new ArrayList<>(setups);
        more.add(setup);
        List<StoredPhysics> morePhysics = new ArrayList<>(physics);
        morePhysics.add(new StoredPhysics.Sound(itsPhysics));
        return new LoggedJoint(airframe, joint.inForce(setup.revision()), more, morePhysics, tests);
    }

    /** What the engine learns from: the counted trials of each setup. */
    JointLog log() {
        List<SetupLog> logs = new ArrayList<>();
        for (int i = 0; i < setups.size(); i++) {
            UUID setup = setups.get(i).id();
            logs.add(
                    physics.get(i) instanceof StoredPhysics.Sound sound
                            ? new SetupLog(
                                    sound.physics().uncertainty().total(),
                                    tests.stream()
                                            .filter(test -> test.counted()
                                                    && test.setupId().equals(setup))
                                            .map(test -> Trials.of(test.report(), sound.physics()))
                                            .toList())
                            : new SetupLog(UNKNOWN, List.of()));
        }
        return new JointLog(logs);
    }

    /** Where a setup stands among the setups. */
    int place(Setup setup) {
        return setups.indexOf(setup);
    }
}
