package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.flight.FlightAir;
import org.sunder.engine.quantity.Pressure;

/** The air of a flight. */
@Schema(name = "FlightAir", description = "The air of the site and of the event, by the standard atmosphere.")
record FlightAirView(
        @Schema(description = "Pressure at the site.") Pressure site,

        @Schema(description = "Pressure at the event.") Pressure event,

        @Schema(
                description = "What a closed compartment still holds from the ground: the structure bears it beside the"
                        + " charge, so the ceiling is lower by it.")
        Pressure trapped) {

    static FlightAirView of(FlightAir air, Display display) {
        return new FlightAirView(
                display.pressure(air.site().pressure()),
                display.pressure(air.event().pressure()),
                display.pressure(air.trappedPressure()));
    }
}
