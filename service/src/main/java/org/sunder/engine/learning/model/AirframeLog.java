package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The joints of one airframe.
 *
 * @param joints its joints
 */
public record AirframeLog(List<JointLog> joints) {

    public AirframeLog {
        joints = List.copyOf(joints);
    }

    /** This airframe with one joint replaced. */
    public AirframeLog with(int index, JointLog joint) {
        List<JointLog> changed = new ArrayList<>(joints);
        changed.set(index, joint);
        return new AirframeLog(changed);
    }

    public boolean hasTrials() {
        return trials().findAny().isPresent();
    }

    public boolean hasSpeeds() {
        return trials().anyMatch(trial -> trial.speed() != null);
    }

    /** What the readings of speed at one of its joints tell together, at most, per squared ln; 0 without any. */
    public double mostSpeedPrecision() {
        return joints.stream().mapToDouble(JointLog::speedPrecision).max().orElse(0);
    }

    /** Whether two of its joints have trials, so that they tell how far joints of an airframe differ. */
    public boolean comparesJoints() {
        return joints.stream().filter(joint -> joint.testedSetups() > 0).count() > 1;
    }

    /** Whether two setups of one joint have trials, so that they tell how far setups of a joint differ. */
    public boolean comparesSetups() {
        return joints.stream().anyMatch(joint -> joint.testedSetups() > 1);
    }

    private Stream<Trial> trials() {
        return joints.stream().flatMap(joint -> joint.setups().stream()).flatMap(setup -> setup.trials().stream());
    }
}
