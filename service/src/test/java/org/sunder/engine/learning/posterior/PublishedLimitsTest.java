package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.learning.posterior.PublishedFits.chance;
import static org.sunder.engine.learning.posterior.PublishedFits.maximum;
import static org.sunder.engine.learning.posterior.PublishedFits.numbers;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.learning.quadrature.FastNormal;

/**
 * What the engine's likelihood says beside its maximum, against published limits and posteriors: profile likelihood, vague
 * and Jeffreys priors. No lapse and no tree.
 */
class PublishedLimitsTest {

    /** Quantiles of χ² with one degree of freedom at 90 and 95 %. */
    private static final double CHI_90 = 2.705543454095404;

    private static final double CHI_95 = 3.841458820694124;
    private static final double SQRT_2PI = 2.5066282746310002;

    private static double normalQuantile(double p) {
        return -StrictMath.sqrt(2) * Erf.erfcInv(2 * p);
    }

    private static double logLikelihood(List<double[]> shots, double mu, double sigma) {
        return shots.stream()
                .mapToDouble(shot -> StrictMath.log(chance(shot[1] == 1, shot[0], mu, sigma)))
                .sum();
    }

    /** Largest log likelihood among all (μ, σ) for which the chance of a response at x has the normal score z. */
    private static double profile(List<double[]> shots, double x, double z) {
        return new BrentOptimizer(1e-9, 1e-12)
                .optimize(
                        new MaxEval(500),
                        GoalType.MAXIMIZE,
                        new SearchInterval(-3, 3, 0),
                        new UnivariateObjectiveFunction(log -> {
                            double sigma = StrictMath.exp(log);
                            return logLikelihood(shots, x - z * sigma, sigma);
                        }))
                .getValue();
    }

    private static double best(List<double[]> shots, double mu) {
        double[] at = maximum(p -> logLikelihood(shots, p[0], StrictMath.exp(p[1])), mu, 0);
        return logLikelihood(shots, at[0], StrictMath.exp(at[1]));
    }

    private static double root(DoubleUnaryOperator function, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-9, 1e-9, 5).solve(200, function::applyAsDouble, low, high);
    }

    /** Limits of the likelihood ratio on the p-quantile, below and above an estimate of it. */
    private static double[] limits(List<double[]> shots, double p, double critical, double estimate, double mu) {
        double best = best(shots, mu);
        DoubleUnaryOperator ratio = x -> 2 * (best - profile(shots, x, normalQuantile(p))) - critical;
        return new double[] {root(ratio, estimate - 4, estimate), root(ratio, estimate, estimate + 9)};
    }

    /** C. F. J. Wu and Y. Tian's test with other late levels: limits as printed in a paper by P. Roediger, 90 %. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 10.170, 9.159269, 10.755014",
        "0.9, 11.367, 10.765501, 12.256497",
        "0.99, 12.343, 11.522703, 14.066164"
    })
    void likelihoodRatioLimitsOfQuantilesArePublished(double p, double estimate, double low, double high) {
        double[] limits = limits(numbers("wu-tian-modified-3pod.csv", 1, 2), p, CHI_90, estimate, 10);
        assertThat(limits[0]).isCloseTo(low, within(5e-4));
        assertThat(limits[1]).isCloseTo(high, within(5e-4));
    }

    /** The same source: limits on the chance of a response, 90 %. */
    @ParameterizedTest
    @CsvSource({
        "8.973379, 0.001106, 0.454013",
        "10.170326, 0.185137, 0.762818",
        "11.367273, 0.744514, 0.981139",
        "12.343095, 0.909089, 0.999921"
    })
    void likelihoodRatioLimitsOfChancesArePublished(double x, double low, double high) {
        List<double[]> shots = numbers("wu-tian-modified-3pod.csv", 1, 2);
        double best = best(shots, 10);
        double estimate = (x - 10.170326) / 0.93395;
        DoubleUnaryOperator ratio = z -> 2 * (best - profile(shots, x, z)) - CHI_90;
        double below = FastNormal.cdf(root(ratio, estimate - 4, estimate));
        double above = FastNormal.cdf(root(ratio, estimate, estimate + 4));
        assertThat(below).isCloseTo(low, within(5e-4));
        assertThat(above).isCloseTo(high, within(5e-4));
    }

    /** B. T. Neyer, Technometrics 36 (1994) 61, table 1, all 20 shots; limits by R, 95 %. */
    @ParameterizedTest
    @CsvSource({"0.5, 5.392, 4.487062, 6.529655", "0.99, 7.814, 6.352255, 12.335074"})
    void likelihoodRatioLimitsOfASequenceAreThoseOfR(double p, double estimate, double low, double high) {
        double[] limits = limits(numbers("neyer-1994-table1.csv", 1, 2), p, CHI_95, estimate, 5);
        assertThat(limits[0]).isCloseTo(low, within(5e-4));
        assertThat(limits[1]).isCloseTo(high, within(5e-4));
    }

    /**
     * C. I. Bliss, Ann. Appl. Biol. 22 (1935) 134, with vague normal priors of variance 1000 on slope and intercept at the
     * mean dose: the BUGS example "Beetles" printed −35.08 (2.64) and 19.81 (1.485) by simulation; values here by
     * quadrature in R.
     */
    @Test
    void vaguePriorsGiveThePublishedPosterior() {
        List<double[]> groups = numbers("beetle-bliss1935.csv", 0, 1, 2);
        double centre = groups.stream().mapToDouble(group -> group[0]).average().orElseThrow();
        double[] sums = new double[5];
        for (double slope = 11; slope <= 29; slope += 0.05) {
            for (double intercept = -0.2; intercept <= 1.2; intercept += 0.01) {
                double log = -(slope * slope + intercept * intercept) / 2000 + 180;
                for (double[] group : groups) {
                    double eta = intercept + slope * (group[0] - centre);
                    log += group[2] * StrictMath.log(chance(true, eta, 0, 1))
                            + (group[1] - group[2]) * StrictMath.log(chance(false, eta, 0, 1));
                }
                double mass = StrictMath.exp(log);
                double alpha = intercept - slope * centre;
                sums[0] += mass;
                sums[1] += mass * alpha;
                sums[2] += mass * alpha * alpha;
                sums[3] += mass * slope;
                sums[4] += mass * slope * slope;
            }
        }
        double alpha = sums[1] / sums[0];
        double beta = sums[3] / sums[0];
        assertThat(alpha).as("published -35.08").isCloseTo(-35.0506, within(0.02));
        assertThat(StrictMath.sqrt(sums[2] / sums[0] - alpha * alpha)).isCloseTo(2.6424, within(0.01));
        assertThat(beta).as("published 19.81").isCloseTo(19.7933, within(0.01));
        assertThat(StrictMath.sqrt(sums[4] / sums[0] - beta * beta)).isCloseTo(1.4857, within(0.005));
    }

    /**
     * Endometrial cancer (G. Heinze, M. Schemper, Stat. Med. 21 (2002) 2409), where maximum likelihood has no answer: with
     * Jeffreys' prior the probit posterior has its mode where R's brglm2 finds it.
     */
    @Test
    void jeffreysPriorTamesSeparatedData() {
        List<double[]> cases = numbers("endometrial-brglm2.csv", 0, 1, 2, 3);
        double[] best = maximum(at -> jeffreys(cases, at), 1, 1, 0, -1);
        double[] expected = {1.95825562, 1.74258264, -0.01573743, -1.40489144};
        for (int i = 0; i < expected.length; i++) {
            assertThat(best[i]).isCloseTo(expected[i], within(2e-5));
        }
    }

    /** Log likelihood and half the log determinant of the information. */
    private static double jeffreys(List<double[]> cases, double[] at) {
        RealMatrix information = MatrixUtils.createRealMatrix(4, 4);
        double log = 0;
        for (double[] row : cases) {
            double[] x = {1, row[0], row[1], row[2]};
            double eta = IntStream.range(0, 4).mapToDouble(i -> at[i] * x[i]).sum();
            double density = StrictMath.exp(-0.5 * eta * eta) / SQRT_2PI;
            double yes = chance(true, eta, 0, 1);
            double no = chance(false, eta, 0, 1);
            log += StrictMath.log(row[3] == 1 ? yes : no);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    information.addToEntry(i, j, x[i] * x[j] * density * density / (yes * no));
                }
            }
        }
        return log + 0.5 * StrictMath.log(new LUDecomposition(information).getDeterminant());
    }
}
