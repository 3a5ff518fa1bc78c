package org.sunder.engine.planning;

import java.util.Random;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;

/**
 * A fixed ladder as commonly done: start at the handbook charge, go up by a fixed share until the joint has separated
 * so many times in a row, fly the last charge.
 */
record FixedLadder(double share, int inARow) implements Strategy {

    @Override
    public String name() {
        return "ladder +%.0f %%, %d in a row".formatted(100 * share, inARow);
    }

    @Override
    public Result run(TrueJoint joint, LeafPosterior start, Random random) {
        double charge = joint.handbookCharge();
        int run = 0;
        int tests = 0;
        int violations = 0;
        while (tests < 30) {
            tests++;
            violations += charge > 3 * joint.handbookCharge() ? 1 : 0;
            if (joint.fire(charge, random) == Outcome.SEPARATED) {
                run++;
                if (run == inARow) {
                    return new Result(tests, charge, Double.NaN, violations);
                }
            } else {
                run = 0;
                charge *= 1 + share;
            }
        }
        return new Result(tests, Double.NaN, Double.NaN, violations);
    }
}
