package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.flight.BayVents;
import org.sunder.engine.quantity.Area;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Pressure;

/** Vents of an electronics bay. */
@Schema(name = "BayVents", description = "Vent holes by the rule of practice, and what physics says of them.")
record VentsView(
        @Schema(description = "Area of all holes by the rule: a quarter-inch hole per 100 cubic inches.")
        Area totalArea,

        @Schema(example = "4") int holes,
        @Schema(description = "Of each hole.") Length diameter,

        @Schema(description = "Nearest drills: a fraction of an inch, a number, a metric one.")
        List<DrillView> drills,

        @Schema(description = "How far the pressure inside stays behind at the ascent speed.")
        Pressure lag,

        @Schema(description = "The altitude that lag is worth: what a barometer reads too low while climbing.")
        Length altitudeError,

        List<Warning> warnings) {

    /** A drill. */
    @Schema(name = "Drill", description = "A drill that can be bought.")
    record DrillView(@Schema(example = "#30") String name, Length diameter) {}

    static VentsView of(BayVents vents, Display display) {
        return new VentsView(
                display.area(vents.totalArea()),
                vents.holes(),
                display.length(vents.diameter()),
                vents.drills().stream()
                        .map(drill -> new DrillView(drill.name(), display.length(drill.diameter())))
                        .toList(),
                display.pressure(vents.lag().pressure()),
                display.altitude(vents.lag().altitudeError()),
                vents.cautions());
    }
}
