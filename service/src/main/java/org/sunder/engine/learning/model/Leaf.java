package org.sunder.engine.learning.model;

/** Which setup of a fleet is asked about; indices count from 0 into the {@link FleetLog}. */
public sealed interface Leaf {

    /** A setup that is in the log, tested or not. */
    record Logged(int airframe, int joint, int setup) implements Leaf {}

    /**
     * A setup not in the log, of a joint that is.
     *
     * @param inputSd relative standard deviation of its handbook charge
     */
    record NewSetup(int airframe, int joint, double inputSd) implements Leaf {}

    /**
     * A joint not in the log, of an airframe that is.
     *
     * @param inputSd relative standard deviation of its handbook charge
     */
    record NewJoint(int airframe, double inputSd) implements Leaf {}

    /**
     * An airframe not in the log.
     *
     * @param inputSd relative standard deviation of its handbook charge
     */
    record NewAirframe(double inputSd) implements Leaf {}
}
