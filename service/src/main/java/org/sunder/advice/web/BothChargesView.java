package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.MathContext;
import org.sunder.advice.BothWords;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.BothCharges;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;

/** Primary and backup together. */
@Schema(
        name = "BothCharges",
        description =
                "What primary and backup do if both burn at once; no more than that happens where the primary's gas"
                        + " is still inside when the backup fires.")
record BothChargesView(
        Mass charge,

        @Schema(description = "Gauge pressure that both make, by the formula.")
        Pressure gaugePressure,

        @Schema(description = "That pressure over the one at which the joint is expected to part.", example = "3.94")
        BigDecimal timesThreshold,

        @Schema(description = "Whether the limits of a single charge allow as much: then the two may overlap in time.")
        boolean withinLimits,

        @Schema(description = "The same in a sentence.") String text) {

    private static final MathContext DIGITS = new MathContext(3);

    static BothChargesView of(BothCharges both, Mass measure, Display display) {
        return new BothChargesView(
                Display.onMeasure(both.charge(), measure),
                display.pressure(both.gaugePressure()),
                BigDecimal.valueOf(both.timesThreshold()).round(DIGITS),
                both.withinLimits(),
                BothWords.of(both, measure, display));
    }
}
