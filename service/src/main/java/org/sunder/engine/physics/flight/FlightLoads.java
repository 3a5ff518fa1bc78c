package org.sunder.engine.physics.flight;

import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.physics.charge.JointSetup;

/**
 * Loads on a joint in flight. Trapped air F = Δp·A with Δp = p_ground − p_event where closed, else the lag of its vents, at
 * most that; drag separation F = (m_f·D_a − m_a·D_f)/(m_f + m_a), from Newton's law of the two parts; jerk F = m·a.
 */
public final class FlightLoads {

    private FlightLoads() {}

    /** Excess pressure in Pa of a compartment of a volume in m³ at the event; never negative. */
    public static double trappedPressure(FlightCase.Climb climb, double volume) {
        Air site = StandardAtmosphere.atGeometric(climb.site().metres());
        Air event = StandardAtmosphere.atGeometric(climb.event().metres());
        double closed = Math.max(0, site.pressure() - event.pressure());
        FlightCase.Vent vent = climb.vent();
        if (vent == null) {
            return closed;
        }
        Orifice holes = Orifice.ofHoles(vent.holes(), vent.diameter().metres());
        // The lag at the site's dense air and the fastest ascent bounds that of the whole climb.
        double lag =
                VentLag.of(volume, holes, site, vent.ascent().metresPerSecond()).pressure();
        return Math.min(closed, lag);
    }

    /** Every load of a case that is stated, on a joint of area m² and free volume m³. Masses are needed for drag. */
    static List<FlightLoad> of(FlightCase flight, JointSetup setup, double area, double volume) {
        List<FlightLoad> loads = new ArrayList<>();
        double trapped = flight.climb() == null ? 0 : trappedPressure(flight.climb(), volume) * area;
        if (flight.climb() != null) {
            loads.add(new FlightLoad(LoadKind.TRAPPED_PRESSURE, trapped));
        }
        if (flight.drag() != null && setup.forwardMass() != null && setup.aftMass() != null) {
            double force = dragSeparation(
                    setup.forwardMass().kilograms(),
                    setup.aftMass().kilograms(),
                    flight.drag().forward().newtons(),
                    flight.drag().aft().newtons());
            loads.add(new FlightLoad(LoadKind.DRAG_SEPARATION, force));
        }
        if (flight.jerk() != null) {
            double jerk = flight.jerk().mass().kilograms()
                    * flight.jerk().deceleration().metresPerSecondSquared();
            loads.add(new FlightLoad(LoadKind.FIRST_EVENT_JERK, jerk));
            if (trapped > 0) {
                loads.add(new FlightLoad(LoadKind.JERK_WITH_TRAPPED_PRESSURE, jerk + trapped));
            }
        }
        return loads;
    }

    /** Pull in N between the two parts; zero where drag presses them together. Masses in kg, drags in N. */
    static double dragSeparation(double forwardMass, double aftMass, double forwardDrag, double aftDrag) {
        return Math.max(0, (forwardMass * aftDrag - aftMass * forwardDrag) / (forwardMass + aftMass));
    }
}
