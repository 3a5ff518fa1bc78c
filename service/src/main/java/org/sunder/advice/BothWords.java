package org.sunder.advice;

import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.BothCharges;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;

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
        Pressure pressure = display.pressure(both.gaugePressure());
        String together = "together, " + ReasonWords.charge(both.charge(), measure) + ", they make "
                + pressure.value().toPlainString() + " " + pressure.unit() + ", "
                + String.format(Locale.ROOT, "%.1f", both.timesThreshold()) + " times what parts the joint";
        return both.withinLimits()
                ? "They may overlap: " + together + ", within the limits."
                : "They must not overlap: " + together + "; at most " + limit(both, measure) + " are allowed.";
    }

    private static String limit(BothCharges both, Mass measure) {
        Mass bound = Display.never(both.bound(), measure);
        return bound.value().toPlainString() + " " + bound.unit();
    }
}
