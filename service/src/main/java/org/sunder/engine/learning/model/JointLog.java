package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;

/**
 * The setups of one joint.
 *
 * @param setups its setups, each with its trials; a setup without trials says nothing
 */
public record JointLog(List<SetupLog> setups) {

    public JointLog {
        setups = List.copyOf(setups);
    }

    /** This joint with one setup replaced. */
    public JointLog with(int index, SetupLog setup) {
        List<SetupLog> changed = new ArrayList<>(setups);
        changed.set(index, setup);
        return new JointLog(changed);
    }

    /** How many of its setups have trials. */
    public long testedSetups() {
        return setups.stream().filter(setup -> !setup.trials().isEmpty()).count();
    }
}
