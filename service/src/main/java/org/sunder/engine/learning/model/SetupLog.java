package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;

/**
 * The counted trials of one setup.
 *
 * @param inputSd relative standard deviation of the setup's handbook charge from its inputs (pins, fit, volume,
 *     powder), not negative
 * @param trials the trials in any order
 */
public record SetupLog(double inputSd, List<Trial> trials) {

    public SetupLog {
        if (!(inputSd >= 0) || Double.isInfinite(inputSd)) {
            throw new IllegalArgumentException("a setup's input uncertainty must be 0 or more, not " + inputSd);
        }
        trials = List.copyOf(trials);
    }

    /** This setup with one more trial. */
    public SetupLog with(Trial trial) {
        List<Trial> more = new ArrayList<>(trials);
        more.add(trial);
        return new SetupLog(inputSd, more);
    }
}
