package org.sunder.engine.planning;

import java.util.Random;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;

/**
 * Up-and-down in steps of 10 %: down after a separation, up otherwise; fly the mean of the log charges plus 2.326 times
 * Dixon's and Mood's estimate of the scatter (W. J. Dixon, A. M. Mood, J. Am. Stat. Assoc. 43 (1948) 109; s = 1.620 d
 * (variance ratio + 0.029), or 0.53 d where that is too small, as in ISO 12107).
 */
record UpAndDown(int tests) implements Strategy {

    private static final double STEP = StrictMath.log(1.10);

    @Override
    public String name() {
        return "up-and-down, %d tests".formatted(tests);
    }

    @Override
    public Result run(TrueJoint joint, LeafPosterior start, Random random) {
        int level = 0;
        int[] levels = new int[tests];
        boolean[] separated = new boolean[tests];
        int count = 0;
        int violations = 0;
        for (int i = 0; i < tests; i++) {
            double charge = joint.handbookCharge() * StrictMath.exp(STEP * level);
            violations += charge > 3 * joint.handbookCharge() ? 1 : 0;
            levels[i] = level;
            separated[i] = joint.fire(charge, random) == Outcome.SEPARATED;
            count += separated[i] ? 1 : 0;
            level += separated[i] ? -1 : 1;
        }
        if (count == 0) {
            return new Result(tests, Double.NaN, Double.NaN, violations);
        }
        return new Result(
                tests,
                joint.handbookCharge() * estimate(levels, separated, 2 * count <= tests),
                Double.NaN,
                violations);
    }

    private static double estimate(int[] levels, boolean[] separated, boolean fewerSeparated) {
        double n = 0;
        double a = 0;
        double b = 0;
        for (int i = 0; i < levels.length; i++) {
            if (separated[i] == fewerSeparated) {
                n++;
                a += levels[i];
                b += levels[i] * levels[i];
            }
        }
        double ratio = n == 0 ? 0 : (n * b - a * a) / (n * n);
        double s = ratio > 0.3 ? 1.620 * STEP * (ratio + 0.029) : 0.53 * STEP;
        double mean = n == 0 ? STEP * (levels[0] - 0.5) : STEP * (a / n + (fewerSeparated ? -0.5 : 0.5));
        return StrictMath.exp(mean + 2.3263479 * s);
    }
}
