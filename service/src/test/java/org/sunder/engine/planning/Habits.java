package org.sunder.engine.planning;

import java.util.Random;
import org.sunder.engine.learning.model.Outcome;

/** The habits that the planner is compared with. None has a rule against a charge above the ceiling, or a backup. */
final class Habits {

    private static final double STEP = StrictMath.log(1.10);
    private static final double Z99 = 2.3263478740408408;

    private Habits() {}

    /**
     * A fixed ladder as commonly done: start at the handbook charge, go up by a fixed share until the joint has separated
     * so many times in a row, fly the last charge.
     */
    static void ladder(TrueJoint joint, double share, int inARow, Random random, Tally tally) {
        double charge = joint.handbookCharge();
        int run = 0;
        int tests = 0;
        int violations = 0;
        while (tests < 30 && run < inARow) {
            charge *= run == 0 && tests > 0 ? 1 + share : 1;
            violations += charge > 3 * joint.handbookCharge() ? 1 : 0;
            run = joint.fire(charge, random) == Outcome.SEPARATED ? run + 1 : 0;
            tests++;
        }
        tally.add(joint, tests, run == inARow ? charge : Double.NaN, Double.NaN, charge, violations);
    }

    /** Up-and-down in steps of 10 %; fly the mean of the log charges plus 2.326 times the scatter estimated. */
    static void upAndDown(TrueJoint joint, int tests, Random random, Tally tally) {
        int level = 0;
        int highest = 0;
        int[] levels = new int[tests];
        boolean[] separated = new boolean[tests];
        int count = 0;
        int violations = 0;
        for (int i = 0; i < tests; i++) {
            double charge = joint.handbookCharge() * StrictMath.exp(STEP * level);
            violations += charge > 3 * joint.handbookCharge() ? 1 : 0;
            levels[i] = level;
            highest = Math.max(highest, level);
            separated[i] = joint.fire(charge, random) == Outcome.SEPARATED;
            count += separated[i] ? 1 : 0;
            level += separated[i] ? -1 : 1;
        }
        DixonMood estimate = DixonMood.of(0, STEP, levels, separated, 2 * count <= tests);
        double charge = count == 0
                ? Double.NaN
                : joint.handbookCharge() * StrictMath.exp(estimate.mean() + Z99 * estimate.scatter());
        double fired = joint.handbookCharge() * StrictMath.exp(STEP * highest);
        tally.add(joint, tests, charge, Double.NaN, fired, violations);
    }
}
