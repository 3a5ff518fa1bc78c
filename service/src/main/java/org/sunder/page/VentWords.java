package org.sunder.page;

import java.util.List;
import java.util.stream.Collectors;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.flight.BayVents;
import org.sunder.engine.physics.flight.DrillSize;
import org.sunder.engine.quantity.Pressure;

/**
 * The vents of a bay, in words.
 *
 * @param holes count and size
 * @param drills what comes near it
 * @param lag what physics says of it
 * @param cautions what to know
 */
record VentWords(String holes, String drills, String lag, List<String> cautions) {

    private static final double SMALL = 1000; // Pa

    static VentWords of(BayVents vents, Display display) {
        return new VentWords(
                vents.holes()
                        + (vents.holes() == 1 ? " hole of " : " holes of ")
                        + Words.brief(display.length(vents.diameter()))
                        + (vents.holes() == 1 ? "" : " each"),
                vents.drills().stream().map(DrillSize::name).collect(Collectors.joining(", ")),
                "Climbing that fast, the pressure inside stays "
                        + lag(vents.lag().pressure(), display) + " behind: a barometer reads "
                        + Display.rough(display.altitude(vents.lag().altitudeError())) + " too low.",
                vents.cautions().stream().map(Warning::text).toList());
    }

    /** A lag is of the order of a pascal: in kilopascals it would be nothing but noughts. */
    private static String lag(double pascals, Display display) {
        return display.units() == UnitSystem.METRIC && pascals < SMALL
                ? Display.rough(Pressure.ofPascals(pascals))
                : Display.rough(display.pressure(pascals));
    }
}
