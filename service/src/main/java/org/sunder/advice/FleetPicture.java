package org.sunder.advice;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.Leaf;
import org.sunder.groundtest.GroundTest;

/**
 * A flyer's whole log as the engine reads it, with the way back to joints.
 *
 * @param log counted trials by airframe, joint and setup
 * @param places where each joint stands in the log
 * @param setups of each joint in order of revision
 * @param tests of each joint in the order they were fired, void ones too
 */
record FleetPicture(
        FleetLog log, Map<UUID, Place> places, Map<UUID, List<Setup>> setups, Map<UUID, List<GroundTest>> tests) {

    /** Position of a joint: indices of its airframe and of the joint in it. */
    record Place(int airframe, int joint) {}

    /** The leaf of a setup. */
    Leaf leaf(Setup setup) {
        Place place = places.get(setup.jointId());
        if (place == null) {
            throw new IllegalStateException("joint " + setup.jointId() + " is not in the log");
        }
        return new Leaf.Logged(place.airframe(), place.joint(), setup.revision() - 1);
    }

    /** The setup in force at a joint. */
    Setup setup(Joint joint) {
        return Objects.requireNonNull(setups.get(joint.id())).get(joint.currentRevision() - 1);
    }

    /** Tests of a joint in the order they were fired. */
    List<GroundTest> testsOf(UUID jointId) {
        return tests.getOrDefault(jointId, List.of());
    }

    /** How many tests of the joint are in the fit. */
    int counted(UUID jointId) {
        return (int) testsOf(jointId).stream().filter(GroundTest::counted).count();
    }

    /** How many tests of all joints are in the fit. */
    int countedInFleet() {
        return (int) tests.values().stream()
                .flatMap(List::stream)
                .filter(GroundTest::counted)
                .count();
    }
}
