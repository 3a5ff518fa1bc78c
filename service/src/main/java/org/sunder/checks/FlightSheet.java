package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.engine.quantity.Acceleration;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;

/**
 * What a joint meets in flight before it is meant to part; what is not given is not looked at.
 *
 * @param climb for the air trapped in the compartment
 * @param drag for drag separation at burnout
 * @param jerk for what an earlier event does to this joint
 */
@Schema(name = "FlightLoadsQuestion", description = "What a joint meets in flight before it is meant to part.")
record FlightSheet(
        @Schema(description = "The climb, for the air trapped in the compartment.") @Valid @Nullable ClimbSheet climb,

        @Schema(description = "Drags just after burnout; needs both masses of the setup.") @Valid @Nullable DragSheet drag,

        @Schema(description = "The jerk of another joint's event.") @Valid @Nullable JerkSheet jerk) {

    /** The climb to the event. */
    @Schema(name = "Climb", description = "The climb from the site to the event, both above sea level.")
    record ClimbSheet(
            @Schema(description = "Of the site, above sea level.") @NotNull(message = "the site's elevation is needed") Length siteElevation,

            @Schema(description = "Of the event, above sea level.") @NotNull(message = "the event's altitude is needed") Length eventAltitude,

            @Schema(description = "Vent holes of the compartment; closed where not given.") @Valid @Nullable VentSheet vent) {

        FlightCase.Climb climb() {
            if (eventAltitude.metres() < siteElevation.metres()) {
                String value = eventAltitude.value() + " " + eventAltitude.unit();
                throw new UnsoundSetupException(List.of(new SetupFault(
                        "flight.climb.event",
                        value,
                        "lies below the site; both are above sea level",
                        "at least the site")));
            }
            FlightCase.Vent holes =
                    vent == null ? null : new FlightCase.Vent(vent.holes(), vent.diameter(), vent.ascentSpeed());
            return new FlightCase.Climb(siteElevation, eventAltitude, holes);
        }
    }

    /** Equal vent holes. */
    @Schema(name = "VentHoles", description = "Equal vent holes of the compartment.")
    record VentSheet(
            @Schema(example = "3") @NotNull(message = "the number of holes is needed") Integer holes,

            @Schema(description = "Of each hole.") @NotNull(message = "the diameter is needed") Length diameter,

            @Schema(description = "Fastest ascent.") @NotNull(message = "the ascent speed is needed") Speed ascentSpeed) {}

    /** Drags at burnout. */
    @Schema(name = "BurnoutDrag", description = "Drags just after burnout.")
    record DragSheet(
            @Schema(description = "Of the part ahead of the joint.") @NotNull(message = "the forward drag is needed") Force forward,

            @Schema(description = "Of the part behind it.") @NotNull(message = "the aft drag is needed") Force aft) {}

    /** The jerk of another event. */
    @Schema(name = "EventJerk", description = "What another joint's event does to this one.")
    record JerkSheet(
            @Schema(description = "What this joint must hold back.") @NotNull(message = "the mass is needed") Mass mass,

            @NotNull(message = "the deceleration is needed") Acceleration deceleration) {}

    FlightCase flight() {
        return new FlightCase(
                climb == null ? null : climb.climb(),
                drag == null ? null : new FlightCase.Drag(drag.forward(), drag.aft()),
                jerk == null ? null : new FlightCase.Jerk(jerk.mass(), jerk.deceleration()));
    }

    /** Where in the body stands what the engine calls by another name. */
    static String pathInBody(String enginePath) {
        return enginePath
                .replace("climb.site", "climb.siteElevation")
                .replace("climb.event", "climb.eventAltitude")
                .replace("vent.ascent", "vent.ascentSpeed");
    }
}
