package org.sunder.advice;

import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.BothCharges;
import org.sunder.engine.quantity.Mass;

/** Whether primary and backup may burn at once, and what both do then, in the builder's words. */
public final class BothWords {

    private BothWords() {}

    /**
     * One sentence.
     *
     * @param measure step of charges, whose unit and digits the charges get
     * @param display units of the pressure
     */
    public static String of(BothCharges both, Mass measure, Display display) {
        String together = "together, " + ReasonWords.charge(both.charge(), measure) + ", they make "
                + Display.brief(display.pressure(both.gaugePressure())) + ", "
                + String.format(Locale.ROOT, "%.1f", both.timesThreshold()) + " times what parts the joint";
        return both.withinLimits()
                ? "They may overlap: " + together + ", within the limits."
                : "They must not overlap: " + together + "; at most "
                        + Display.words(Display.never(both.bound(), measure)) + " are allowed.";
    }
}
