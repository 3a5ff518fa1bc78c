package org.sunder.engine.planning;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;
import org.hipparchus.util.FastMath;

/**
 * What tests show with no model: exact binomial limits.
 *
 * <p>Clopper–Pearson (C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404): the lower limit at confidence C for s
 * successes in n trials is the beta quantile B(1 − C; s, n − s + 1); with no failure it is the success-run theorem R =
 * (1 − C)^(1/n).
 *
 * @param lowerBound lower confidence bound on the chance of separating
 * @param confidence one-sided confidence of the bound
 * @param separated counted firings that separated
 * @param counted counted firings
 */
public record TestsAlone(double lowerBound, double confidence, int separated, int counted) {

    /** One-sided confidence beside a flight charge. */
    public static final double CONFIDENCE = 0.95;

    private static final double ACCURACY = 1e-12;
    private static final int MAX_EVALUATIONS = 200;

    /** The bound for s separations in n counted firings. */
    public static TestsAlone of(int separated, int counted, double confidence) {
        return new TestsAlone(lowerBound(separated, counted, confidence), confidence, separated, counted);
    }

    /** The bound from the counted firings at a log ratio or below. */
    public static TestsAlone upTo(double logRatio, PlanningCase on) {
        long counted = on.counted().stream()
                .filter(firing -> firing.logRatio() <= logRatio + 1e-9)
                .count();
        long separated = on.counted().stream()
                .filter(firing -> firing.separated() && firing.logRatio() <= logRatio + 1e-9)
                .count();
        return of((int) separated, (int) counted, CONFIDENCE);
    }

    /** Clopper–Pearson one-sided lower limit. */
    static double lowerBound(int successes, int trials, double confidence) {
        if (successes < 0 || trials < successes || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("0 ≤ successes ≤ trials and a confidence in (0, 1)");
        }
        if (successes == 0) {
            return 0;
        }
        if (successes == trials) {
            return FastMath.pow(1 - confidence, 1.0 / trials);
        }
        return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, ACCURACY, 5)
                .solve(
                        MAX_EVALUATIONS,
                        p -> Beta.regularizedBeta(p, successes, trials - successes + 1) - (1 - confidence),
                        0,
                        1);
    }

    /** Clopper–Pearson one-sided upper limit, by symmetry. */
    static double upperBound(int successes, int trials, double confidence) {
        return 1 - lowerBound(trials - successes, trials, confidence);
    }

    /** Trials without failure that show a reliability at a confidence: n = ⌈ln(1 − C) / ln R⌉. */
    static int successRun(double reliability, double confidence) {
        return (int) Math.ceil(FastMath.log(1 - confidence) / FastMath.log(reliability));
    }
}
