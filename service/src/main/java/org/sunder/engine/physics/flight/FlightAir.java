package org.sunder.engine.physics.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.charge.Ceilings;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.Separations;

/**
 * What the air of the site and of the event does to a joint's charge.
 *
 * <p>The pins feel a difference of pressure, so the threshold p* = F/A and the charge that makes it, p*·V/λ, are those of the
 * ground whatever the air outside. Three things do change:
 *
 * <ul>
 *   <li>Trapped air (p_i &gt; p_a) pushes too. It would save charge, but seals leak, so the charge is not lowered for it; the
 *       ceiling is, because the structure bears both: (limit − Δp)·V/λ.
 *   <li>Less air outside resists less, so the parts leave faster with the same charge.
 *   <li>Above 6 km loose powder burns badly (common practice): the formula then promises too much, which no factor of this
 *       model repairs, so it is flagged.
 * </ul>
 *
 * @param site air at the site
 * @param event air at the event
 * @param trappedPressure Δp at the event, Pa
 * @param ceiling the ceiling in flight
 * @param warnings what a person should know
 */
public record FlightAir(Air site, Air event, double trappedPressure, Ceiling ceiling, List<Warning> warnings) {

    /** Altitude in metres above which loose powder burns badly, common practice. */
    public static final double THIN_AIR = 6000;

    /** Copies the list. */
    public FlightAir {
        warnings = List.copyOf(warnings);
    }

    /**
     * For a joint and its climb.
     *
     * @throws UnsoundSetupException with every fault
     */
    public static FlightAir of(JointPhysics joint, FlightCase.Climb climb) {
        Faults faults = new Faults();
        FlightCheck.climb(faults, climb);
        faults.throwIfAny();
        Air event = StandardAtmosphere.atGeometric(climb.event().metres());
        double trapped = FlightLoads.trappedPressure(climb, joint.freeVolume());
        Ceiling ceiling = Ceilings.of(
                joint.setup(),
                joint.freeVolume(),
                joint.area(),
                joint.thresholdPressure(),
                event.pressure(),
                event.pressure() + trapped);
        return new FlightAir(
                StandardAtmosphere.atGeometric(climb.site().metres()),
                event,
                trapped,
                lower(ceiling, joint.ceiling()),
                warnings(joint, climb, trapped, ceiling));
    }

    /** Relative speed in m/s in the event's air for a charge in kg, or empty where a mass or the shoulder is not known. */
    public Optional<Double> separationSpeed(JointPhysics joint, double chargeKg) {
        return Separations.find(
                        joint.setup(),
                        joint.freeVolume(),
                        joint.area(),
                        event.pressure(),
                        event.pressure() + trappedPressure)
                .map(s -> s.speed(chargeKg));
    }

    private static Ceiling lower(Ceiling a, Ceiling b) {
        return a.chargeKg() < b.chargeKg() ? a : b;
    }

    private static List<Warning> warnings(JointPhysics joint, FlightCase.Climb climb, double trapped, Ceiling ceiling) {
        List<Warning> warnings = new ArrayList<>();
        if (climb.event().metres() > THIN_AIR) {
            warnings.add(
                    new Warning(
                            "thin-air",
                            "Above 6 km loose powder burns badly: the charge must be held firmly, and ground tests do not show it."));
        }
        if (trapped >= joint.thresholdPressure()) {
            warnings.add(new Warning(
                    "trapped-air-parts-joint",
                    "The air trapped in the compartment alone may part this joint: vent it."));
        }
        if (ceiling.chargeKg() < joint.handbookCharge()) {
            warnings.add(
                    new Warning(
                            "flight-ceiling-below-handbook",
                            "With the air trapped inside, the ceiling in flight lies below the handbook charge: vent the compartment."));
        }
        return warnings;
    }
}
