package org.sunder.page;

import java.util.List;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.flight.FlightLoad;
import org.sunder.engine.physics.flight.LoadKind;
import org.sunder.engine.physics.flight.PinChoice;
import org.sunder.engine.physics.flight.PinsInFlight;
import org.sunder.engine.quantity.Mass;

/**
 * Whether the pins of a joint hold in flight, in words.
 *
 * @param verdict whether they do
 * @param why by how much
 * @param loads what pulls
 * @param fewest the smallest count that holds, and whether a charge may break it
 */
record PinsSheet(String verdict, String why, List<Load> loads, String fewest) {

    /** What pulls, how hard, and how many times that the pins surely hold. */
    record Load(String what, String force, String times) {}

    static PinsSheet of(PinsInFlight pins, String margin, Display display, Mass measure) {
        String holding = "The pins surely hold " + Words.brief(display.force(pins.holdingForce()))
                + ": weak ones, and no friction";
        return new PinsSheet(
                pins.holds() ? "They hold" : "They do not hold well enough",
                pins.worst() == 0
                        ? holding + ". Nothing pulls at them."
                        : holding + ". That is " + Words.digits(pins.margin()) + " times the largest load, "
                                + Words.brief(display.force(pins.worst())) + "; " + margin + " times is asked for.",
                pins.loads().stream().map(load -> load(load, pins, display)).toList(),
                fewest(pins.smallest(), measure));
    }

    private static Load load(FlightLoad load, PinsInFlight pins, Display display) {
        return new Load(
                what(load.kind()),
                load.force() == 0 ? "nothing" : Words.brief(display.force(load.force())),
                load.force() == 0 ? "it does not pull" : Words.digits(load.margin(pins.holdingForce())) + " times");
    }

    private static String what(LoadKind kind) {
        return switch (kind) {
            case TRAPPED_PRESSURE -> "air trapped in the compartment";
            case DRAG_SEPARATION -> "drag at burnout, pulling the parts asunder";
            case FIRST_EVENT_JERK -> "the jerk of the other event";
            case JERK_WITH_TRAPPED_PRESSURE -> "that jerk while trapped air still pushes";
        };
    }

    private static String fewest(PinChoice choice, Mass measure) {
        String charge = AnswerWords.near(choice.chargeKg(), measure);
        String ceiling = AnswerWords.limit(choice.ceiling().chargeKg(), measure);
        String pins = choice.count() == 1 ? "1 pin is" : choice.count() + " pins are";
        return choice instanceof PinChoice.Holds
                ? pins + " the fewest that hold. To break strong ones and the fit the formula asks for about " + charge
                        + ", below the ceiling of " + ceiling + "."
                : "No count both holds and parts: " + pins
                        + " the fewest that hold, and to break strong ones the formula"
                        + " asks for about " + charge + ", where " + ceiling
                        + " is the ceiling. Vent the compartment, or change area, volume or load.";
    }
}
