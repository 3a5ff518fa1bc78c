package org.sunder.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.PartingLoad;

/** What a measured separation asked of harness and bulkheads, in sentences. */
public final class LoadWords {

    private LoadWords() {}

    /** The measured speed beside the predicted one, and what both ends saw. */
    public static String of(PartingLoad load, Display display) {
        return "Parted at " + Display.brief(display.speed(load.measured())) + ", predicted "
                + Display.brief(display.speed(load.predicted())) + ": " + energy(load.energy())
                + " J for the harness, and "
                + Display.brief(display.pressure(load.leastPressure())) + " or more on the bulkheads.";
    }

    /** That it passed what the flyer stated; null where it did not. */
    public static @Nullable String warning(PartingLoad load, Display display) {
        if (load.exceeded() instanceof Limit.SeparationSpeedLimit limit) {
            return "The parts left faster than the " + Display.words(limit.speed())
                    + " stated for the harness: look over harness, bulkheads and fittings before anything is fired again.";
        }
        if (load.exceeded() instanceof Limit.GaugePressureLimit limit) {
            return "The speed of the parts takes "
                    + Display.brief(display.pressure(load.leastPressure())) + " or more, and "
                    + Display.words(limit.pressure())
                    + " was stated: look over bulkheads, harness and fittings before anything is fired again.";
        }
        return null;
    }

    private static String energy(double joules) {
        return BigDecimal.valueOf(joules).round(new MathContext(2)).toPlainString();
    }
}
