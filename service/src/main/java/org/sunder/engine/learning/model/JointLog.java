package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

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

    /** What its readings of speed tell together, per squared ln: the sum of their precisions. */
    double speedPrecision() {
        return setups.stream()
                .flatMap(setup -> setup.trials().stream())
                .map(Trial::speed)
                .filter(Objects::nonNull)
                .mapToDouble(SpeedReading::precision)
                .sum();
    }

    /** How many of its setups have trials. */
    public long testedSetups() {
        return setups.stream().filter(setup -> !setup.trials().isEmpty()).count();
    }
}
