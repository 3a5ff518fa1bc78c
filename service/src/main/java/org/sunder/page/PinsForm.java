package org.sunder.page;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.engine.physics.flight.PinsInFlight;
import org.sunder.engine.quantity.Acceleration;
import org.sunder.engine.quantity.AccelerationUnit;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Speed;

/** What a flyer says of the flight that the pins of a joint must hold in; what is left empty is not looked at. */
final class PinsForm extends TypedForm {

    private static final Length SEA_LEVEL = new Length(BigDecimal.ZERO, LengthUnit.METRE);
    private static final int SHOWN_DIGITS = 6;

    PinsForm(UnitSystem units, Map<String, String> typed) {
        super(units, typed);
    }

    public String forceUnit() {
        return metric() ? "N" : "lbf";
    }

    public String massUnit() {
        return metric() ? "kg" : "lb";
    }

    /** How the pins of a setup fare, or null where nothing is typed or something is wrong. */
    @Nullable PinsInFlight answer(JointSetup setup) {
        FlightCase flight = new FlightCase(climb(), drag(), jerk());
        BigDecimal margin = quantity("margin", (n, metric) -> n);
        if (wrong() || (flight.climb() == null && flight.drag() == null && flight.jerk() == null)) {
            return null;
        }
        try {
            return PinsInFlight.of(setup, flight, margin == null ? PinsInFlight.DEFAULT_MARGIN : margin.doubleValue());
        } catch (UnsoundSetupException e) {
            if (e.faults().stream().anyMatch(fault -> fault.path().equals("flight.drag"))) {
                faulty("forwardDrag", "The setup has to state the masses of both parts for that.");
            }
            faulty(e, PinsForm::field);
            return null;
        }
    }

    /** The margin asked for. */
    public String margin() {
        return typed("margin").isBlank() ? Words.digits(PinsInFlight.DEFAULT_MARGIN) : typed("margin");
    }

    private FlightCase.@Nullable Climb climb() {
        Length site = far("site");
        Length event = far("event");
        FlightCase.Vent vent = vent();
        if (event == null) {
            if (site != null || vent != null) {
                faulty("event", "The height of the event is needed for that.");
            }
            return null;
        }
        if (event.metres() < 0) {
            faulty("event", "An event lies above the ground.");
            return null;
        }
        Length from = site == null ? SEA_LEVEL : site;
        Length at = Length.ofMetres(from.metres() + event.metres()).in(LengthUnit.METRE, SHOWN_DIGITS);
        return new FlightCase.Climb(from, at, vent);
    }

    private FlightCase.@Nullable Vent vent() {
        Integer holes = count("holes");
        Length diameter = part("hole");
        Speed ascent = speed("ascent");
        if (!together("Vent holes need their number, their diameter and the fastest ascent.", "holes", "hole", "ascent")
                || holes == null
                || diameter == null
                || ascent == null) {
            return null;
        }
        return new FlightCase.Vent(holes, diameter, ascent);
    }

    private FlightCase.@Nullable Drag drag() {
        Force forward = force("forwardDrag");
        Force aft = force("aftDrag");
        if (!together("Both drags are needed.", "forwardDrag", "aftDrag") || forward == null || aft == null) {
            return null;
        }
        return new FlightCase.Drag(forward, aft);
    }

    private FlightCase.@Nullable Jerk jerk() {
        Mass mass = quantity("jerkMass", (n, metric) -> new Mass(n, metric ? MassUnit.KILOGRAM : MassUnit.POUND));
        Acceleration deceleration =
                quantity("jerk", (n, metric) -> new Acceleration(n, AccelerationUnit.STANDARD_GRAVITY));
        if (!together("A jerk needs the mass and the deceleration.", "jerkMass", "jerk")
                || mass == null
                || deceleration == null) {
            return null;
        }
        return new FlightCase.Jerk(mass, deceleration);
    }

    private @Nullable Force force(String name) {
        return quantity(name, (n, metric) -> new Force(n, metric ? ForceUnit.NEWTON : ForceUnit.POUND_FORCE));
    }

    /** Whether all of some fields are filled; where only some are, the empty ones are at fault. */
    private boolean together(String words, String... names) {
        int filled = 0;
        for (String name : names) {
            filled += typed(name).isBlank() ? 0 : 1;
        }
        if (filled > 0 && filled < names.length) {
            for (String name : names) {
                if (typed(name).isBlank()) {
                    faulty(name, words);
                }
            }
        }
        return filled == names.length;
    }

    private static String field(String path) {
        return switch (path) {
            case "flight.climb.site" -> "site";
            case "flight.climb.event" -> "event";
            case "flight.climb.vent.holes" -> "holes";
            case "flight.climb.vent.diameter" -> "hole";
            case "flight.climb.vent.ascent" -> "ascent";
            case "flight.drag", "flight.drag.forward" -> "forwardDrag";
            case "flight.drag.aft" -> "aftDrag";
            case "flight.jerk.mass" -> "jerkMass";
            case "flight.jerk.deceleration" -> "jerk";
            default -> path;
        };
    }
}
