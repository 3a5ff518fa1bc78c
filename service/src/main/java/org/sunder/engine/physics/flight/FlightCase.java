package org.sunder.engine.physics.flight;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Acceleration;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;

/**
 * What a joint meets in flight before it is meant to part.
 *
 * @param climb the climb to the event, for the air trapped in the compartment, or null
 * @param drag drags at burnout, or null
 * @param jerk what an earlier event does to this joint, or null
 */
public record FlightCase(
        @Nullable Climb climb,
        @Nullable Drag drag,
        @Nullable Jerk jerk) {

    /**
     * The climb from the ground to the event.
     *
     * @param site altitude of the site above sea level
     * @param event altitude of the event above sea level
     * @param vent holes of the compartment, or null where it is closed
     */
    public record Climb(Length site, Length event, @Nullable Vent vent) {}

    /**
     * Equal vent holes of the compartment.
     *
     * @param holes how many
     * @param diameter of each
     * @param ascent fastest ascent
     */
    public record Vent(int holes, Length diameter, Speed ascent) {}

    /**
     * Drags just after burnout.
     *
     * @param forward drag of the part ahead of the joint
     * @param aft drag of the part behind it
     */
    public record Drag(Force forward, Force aft) {}

    /**
     * The jerk of another joint's event.
     *
     * @param mass what this joint must hold back
     * @param deceleration stated deceleration
     */
    public record Jerk(Mass mass, Acceleration deceleration) {}
}
