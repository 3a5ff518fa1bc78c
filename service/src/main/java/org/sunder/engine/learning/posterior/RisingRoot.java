package org.sunder.engine.learning.posterior;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Zeros of rising functions of a log ratio. */
final class RisingRoot {

    /** Log ratios beyond this, a factor of 3e8, are no charge at all. */
    private static final double REACH = 20;
    /** Accuracy of a root: a millionth of what a scale can tell. */
    private static final double ACCURACY = 1e-9;

    /** First step away from a guess. */
    private static final double NEAR = 0.02;

    private static final int MAX_EVALUATIONS = 200;

    private RisingRoot() {}

    /** Where a rising function is zero. */
    static double ofRising(DoubleUnaryOperator function) {
        double low = -1;
        double high = 1;
        while (function.applyAsDouble(low) > 0 && low > -REACH) {
            low *= 2;
        }
        while (function.applyAsDouble(high) < 0 && high < REACH) {
            high *= 2;
        }
        return between(low, high, function);
    }

    /** Where a rising function is zero, quicker the nearer it is to a guess. */
    static double ofRisingNear(double guess, DoubleUnaryOperator function) {
        double reach = NEAR;
        double low = guess;
        double high = guess;
        if (function.applyAsDouble(guess) > 0) {
            do {
                high = low;
                low = high - reach;
                reach *= 2;
            } while (function.applyAsDouble(low) > 0 && low > -REACH);
        } else {
            do {
                low = high;
                high = low + reach;
                reach *= 2;
            } while (function.applyAsDouble(high) < 0 && high < REACH);
        }
        return between(low, high, function);
    }

    /** Where a function that is negative at {@code low} and positive at {@code high} is zero. */
    static double between(double low, double high, DoubleUnaryOperator function) {
        return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, ACCURACY, 5)
                .solve(MAX_EVALUATIONS, function::applyAsDouble, low, high);
    }
}
