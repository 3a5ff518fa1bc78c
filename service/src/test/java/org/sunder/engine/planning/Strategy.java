package org.sunder.engine.planning;

import java.util.Random;

/** A way to find a flight charge by tests. */
interface Strategy {

    String name();

    /** Tests a joint until a charge is found or given up. */
    Result run(TrueJoint joint, Random random);

    /**
     * What came of it.
     *
     * @param tests firings made
     * @param charge charge to fly, kg; NaN if given up
     * @param violations charges fired or flown above the ceiling or the largest step
     */
    record Result(int tests, double charge, int violations) {}
}
