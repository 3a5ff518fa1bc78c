package org.sunder.engine.physics.flight;

import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.charge.JointSetup;

/** Checks what was stated of a flight; paths begin with {@code flight}. */
final class FlightCheck {

    private static final Range DRAG = new Range(0, 1e5, "0 to 100 kN");
    private static final Range DECELERATION = new Range(0, 10_000, "0 to 10000 m/s2");
    private static final Range HOLES = new Range(1, 24, "1 to 24");
    private static final Range HOLE = new Range(1e-4, 0.05, "0.1 to 50 mm");
    private static final Range ASCENT = new Range(0, 1500, "0 to 1500 m/s");

    private FlightCheck() {}

    static void check(Faults faults, JointSetup setup, FlightCase flight) {
        if (setup.pins().isEmpty()) {
            faults.add("pins", "[]", "a joint without pins has none to count", "at least one set of pins");
        }
        if (flight.climb() != null) {
            climb(faults, flight.climb());
        }
        if (flight.drag() != null) {
            faults.range("flight.drag.forward", flight.drag().forward(), DRAG);
            faults.range("flight.drag.aft", flight.drag().aft(), DRAG);
            if (setup.forwardMass() == null || setup.aftMass() == null) {
                faults.add("flight.drag", "drags", "drag separation needs both masses of the setup", "both masses");
            }
        }
        if (flight.jerk() != null) {
            faults.range("flight.jerk.mass", flight.jerk().mass(), SetupBounds.PART_MASS);
            faults.range("flight.jerk.deceleration", flight.jerk().deceleration(), DECELERATION);
        }
    }

    static void climb(Faults faults, FlightCase.Climb climb) {
        faults.range("flight.climb.site", climb.site(), StandardAtmosphere.ALTITUDE);
        faults.range("flight.climb.event", climb.event(), StandardAtmosphere.ALTITUDE);
        if (climb.vent() != null) {
            faults.range("flight.climb.vent.holes", climb.vent().holes(), HOLES);
            faults.range("flight.climb.vent.diameter", climb.vent().diameter(), HOLE);
            faults.range("flight.climb.vent.ascent", climb.vent().ascent(), ASCENT);
        }
    }
}
