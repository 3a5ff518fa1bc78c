package org.sunder.engine.physics.flight;

/**
 * One load on a joint in flight.
 *
 * @param kind what pulls
 * @param force N, not negative
 */
public record FlightLoad(LoadKind kind, double force) {

    /**
     * What the pins have left against it.
     *
     * @param holding force in N that the pins surely hold
     * @return holding over load; infinite where nothing pulls
     */
    public double margin(double holding) {
        return force == 0 ? Double.POSITIVE_INFINITY : holding / force;
    }
}
