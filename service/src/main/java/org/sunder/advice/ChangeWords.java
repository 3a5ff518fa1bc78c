package org.sunder.advice;

import java.util.stream.Collectors;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.SetupChange;
import org.sunder.engine.quantity.Mass;

/** Another setup that would do, in the builder's words. */
public final class ChangeWords {

    private ChangeWords() {}

    /**
     * One sentence.
     *
     * @param inUse step of charges now
     * @param display units of the volume
     */
    public static String of(SetupChange change, Mass inUse, Display display) {
        Mass measure = change.measure() == null ? inUse : change.measure();
        if (change.kind() == SetupChange.Kind.FINER_MEASURE) {
            return "Measure in steps of " + Display.words(measure) + ".";
        }
        return what(change, display) + ": likely to need " + ReasonWords.charge(change.targetCharge(), measure)
                + ", at most "
                + Display.words(Display.never(change.physics().ceiling().chargeKg(), measure)) + " allowed.";
    }

    private static String what(SetupChange change, Display display) {
        if (change.filler() > 0) {
            return "Fill " + Display.brief(display.volume(change.filler())) + " with something solid";
        }
        return change.pins().stream()
                        .map(pins -> pins.count() + " × " + pins.thread())
                        .collect(Collectors.joining(", "))
                + " as pins";
    }
}
