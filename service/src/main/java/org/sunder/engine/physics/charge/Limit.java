package org.sunder.engine.physics.charge;

import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Speed;

/** What the flyer says the airframe or the harness must never see. */
public sealed interface Limit {

    /**
     * The gauge pressure the structure withstands.
     *
     * @param pressure gauge pressure in the compartment
     */
    record GaugePressureLimit(Pressure pressure) implements Limit {}

    /**
     * The relative speed at which the harness may be run out.
     *
     * @param speed relative speed of the two parts
     */
    record SeparationSpeedLimit(Speed speed) implements Limit {}
}
