package org.sunder.engine.learning;

import java.util.ArrayList;
import java.util.List;

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

    boolean hasTrials() {
        return joints.stream()
                .flatMap(joint -> joint.setups().stream())
                .anyMatch(setup -> !setup.trials().isEmpty());
    }
}
