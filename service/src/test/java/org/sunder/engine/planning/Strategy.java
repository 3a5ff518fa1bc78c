package org.sunder.engine.planning;

import java.util.Random;
import org.sunder.engine.learning.LeafPosterior;

/** A way to find a flight charge by tests. */
interface Strategy {

    String name();

    /** Tests a joint until a charge is found or given up; start is what the fleet taught. */
    Result run(TrueJoint joint, LeafPosterior start, Random random);

    /**
     * What came of it.
     *
     * @param tests firings made
     * @param charge charge to fly, kg; NaN if given up
     * @param backup second charge to fly, kg; NaN if there is none
     * @param violations charges fired or flown above the ceiling or the largest step
     */
    record Result(int tests, double charge, double backup, int violations) {}
}
