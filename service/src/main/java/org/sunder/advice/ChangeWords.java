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
            return inShort(change, display) + ".";
        }
        return inShort(change, display) + ": likely to need " + ReasonWords.charge(change.targetCharge(), measure)
                + ", at most "
                + Display.words(Display.never(change.physics().ceiling().chargeKg(), measure)) + " allowed.";
    }

    /** What changes, in a few words. */
    public static String inShort(SetupChange change, Display display) {
        if (change.measure() != null) {
            return "Measure in steps of " + Display.words(change.measure());
        }
        if (change.filler() > 0) {
            return "Fill " + Display.brief(display.volume(change.filler())) + " with something solid";
        }
        return change.pins().stream()
                        .map(pins -> pins.count() + " × " + pins.thread())
                        .collect(Collectors.joining(", "))
                + " as pins";
    }
}
