package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.learning.posterior.PublishedFits.chance;
import static org.sunder.engine.learning.posterior.PublishedFits.maximum;
import static org.sunder.engine.learning.posterior.PublishedFits.numbers;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Grid;

/**
 * The engine's likelihood of ordered outcomes against published fits of the same ordered probit to other data: maximum
 * likelihood through {@link ProbitNode#chance}, with no prior, no lapse and no tree.
 */
class PublishedDataTest {

    private static final double Z90 = 1.2815515655446004;
    private static final double Z99 = 2.3263478740408408;

    /** μ and σ of a sequence of shots. */
    private static double[] fit(List<double[]> shots, double mu, double sigma) {
        double[] best = maximum(
                at -> shots.stream()
                        .mapToDouble(
                                shot -> StrictMath.log(chance(shot[1] == 1, shot[0], at[0], StrictMath.exp(at[1]))))
                        .sum(),
                mu,
                StrictMath.log(sigma));
        return new double[] {best[0], StrictMath.exp(best[1])};
    }

    /** C. I. Bliss, Ann. Appl. Biol. 22 (1935) 134; A. J. Dobson, A. G. Barnett, Generalized Linear Models: 10.12. */
    @Test
    void beetleMortalityIsFittedAsPublished() {
        List<double[]> groups = numbers("beetle-bliss1935.csv", 0, 1, 2);
        double[] best = maximum(
                at -> groups.stream()
                        .mapToDouble(group ->
                                group[2] * StrictMath.log(chance(true, group[0], at[0], StrictMath.exp(at[1])))
                                        + (group[1] - group[2])
                                                * StrictMath.log(chance(false, group[0], at[0], StrictMath.exp(at[1]))))
                        .sum(),
                1.77,
                StrictMath.log(0.05));
        double mu = best[0];
        double sigma = StrictMath.exp(best[1]);
        assertThat(mu).isCloseTo(1.7708524, within(2e-6));
        assertThat(sigma).isCloseTo(0.0506895, within(2e-6));
        assertThat(1 / sigma).as("slope, published 19.73").isCloseTo(19.727934, within(5e-4));
        assertThat(mu + Z99 * sigma).isCloseTo(1.888774, within(3e-6));
        double deviance = 0;
        double[] fitted = {3.358, 10.722, 23.482, 33.816, 49.616, 53.319, 59.665, 59.228};
        for (int i = 0; i < groups.size(); i++) {
            double n = groups.get(i)[1];
            double killed = groups.get(i)[2];
            double expected = n * chance(true, groups.get(i)[0], mu, sigma);
            assertThat(expected).isCloseTo(fitted[i], within(1e-3));
            deviance += 2 * killed * StrictMath.log(killed / expected);
            deviance += killed == n ? 0 : 2 * (n - killed) * StrictMath.log((n - killed) / (n - expected));
        }
        assertThat(deviance).isCloseTo(10.119758, within(1e-5));
    }

    /** C. F. J. Wu, Y. Tian, J. Stat. Plan. Inference 149 (2014) 1, table 1; 9 shots as published, 15 and 30 by R. */
    @ParameterizedTest
    @CsvSource({"9, 9.972619, 2.070454", "15, 10.223008, 1.161903", "30, 10.187659, 0.968219"})
    void anAdaptiveSensitivityTestIsFittedAsPublished(int shots, double mu, double sigma) {
        double[] best = fit(numbers("wu-tian-2014-table1.csv", 1, 2).subList(0, shots), 10, 1);
        assertThat(best[0]).isCloseTo(mu, within(2e-5));
        assertThat(best[1]).isCloseTo(sigma, within(2e-5));
    }

    /** The same test with other late levels, as printed in a paper by P. Roediger. */
    @Test
    void theModifiedTestIsFittedAsPublished() {
        double[] best = fit(numbers("wu-tian-modified-3pod.csv", 1, 2), 10, 1);
        assertThat(best[0]).isCloseTo(10.17033, within(3e-5));
        assertThat(best[1]).isCloseTo(0.93398, within(5e-5));
        assertThat(best[0] + Z90 * best[1]).isCloseTo(11.367273, within(1e-4));
    }

    /** B. T. Neyer, Technometrics 36 (1994) 61, table 1: running estimates after so many shots. */
    @ParameterizedTest
    @CsvSource({
        "13, 4.66, 0.50",
        "14, 5.22, 0.96",
        "15, 5.10, 0.83",
        "16, 5.70, 1.39",
        "17, 5.58, 1.25",
        "18, 5.50, 1.16",
        "19, 5.44, 1.09"
    })
    void theRunningEstimatesOfASequenceAreThePublishedOnes(int shots, double mu, double sigma) {
        double[] best = fit(numbers("neyer-1994-table1.csv", 1, 2).subList(0, shots), 5, 1);
        assertThat(best[0]).isCloseTo(mu, within(0.005 + 1e-9));
        assertThat(best[1]).isCloseTo(sigma, within(0.005 + 1e-9));
    }

    /** C. Gorla et al. (2017), material 751, an up-and-down run; probit fit by R. */
    @Test
    void anUpAndDownRunIsFittedAsByR() {
        double[] best = fit(numbers("gorla-2017-751.csv", 1, 2), 41, 1);
        assertThat(best[0]).isCloseTo(40.811073, within(2e-5));
        assertThat(best[1]).isCloseTo(0.887194, within(2e-5));
    }

    /**
     * Copenhagen housing (W. N. Venables, B. D. Ripley, Modern Applied Statistics with S, 4th ed., 7.3): three ordered
     * categories, cumulative probit by R's MASS::polr. Category boundaries are c and c + δ, σ is 1.
     */
    @Test
    void threeOrderedCategoriesAreFittedAsByR() {
        List<String[]> rows = ReferenceCases.table("published/housing-MASS.csv");
        Function<String[], double[]> covariates = row -> new double[] {
            row[1].equals("Medium") ? 1 : 0, row[1].equals("High") ? 1 : 0, row[2].equals("Apartment") ? 1 : 0,
            row[2].equals("Atrium") ? 1 : 0, row[2].equals("Terrace") ? 1 : 0, row[3].equals("High") ? 1 : 0
        };
        Map<String, Outcome> order = Map.of("Low", Outcome.NONE, "Medium", Outcome.PARTIAL, "High", Outcome.SEPARATED);
        ToDoubleFunction<double[]> logLikelihood = at -> rows.stream()
                .mapToDouble(row -> {
                    double eta = 0;
                    for (int i = 0; i < 6; i++) {
                        eta += at[i] * covariates.apply(row)[i];
                    }
                    Outcome outcome = order.get(row[0]);
                    return Double.parseDouble(row[4])
                            * StrictMath.log(
                                    ProbitNode.of(1, StrictMath.exp(at[7])).chance(outcome, eta, at[6]));
                })
                .sum();
        double[] published = {
            0.3464228,
            0.7829146,
            -0.3475367,
            -0.2178875,
            -0.6641735,
            0.2223858,
            -0.2998279,
            StrictMath.log(0.4267208 + 0.2998279)
        };
        assertThat(-2 * logLikelihood.applyAsDouble(published)).isCloseTo(3479.688843, within(1e-5));
        double[] best = maximum(logLikelihood, 0.3, 0.7, -0.3, -0.2, -0.6, 0.2, -0.3, -0.3);
        for (int i = 0; i < published.length; i++) {
            assertThat(best[i]).isCloseTo(published[i], within(2e-5));
        }
    }

    /**
     * Bitterness of wine (J. Randall 1989, from R. H. B. Christensen's tutorial of cumulative link models), probit by R's
     * ordinal: each of five categories is a band of its own.
     */
    @Test
    void fiveOrderedCategoriesHaveTheLikelihoodOfR() {
        double[] theta = {-0.77326273, 0.73602149, 2.04468046, 2.94134498};
        assertThat(wine(theta, 1.49937458, 0.86774354)).isCloseTo(-85.76114836, within(1e-6));
        assertThat(wine(theta, 1.499, 0.868)).isLessThan(-85.76114836);
    }

    private static double wine(double[] theta, double warm, double contact) {
        return ReferenceCases.table("published/wine-ordinal.csv").stream()
                .mapToDouble(row -> StrictMath.log(wineChance(row, theta, warm, contact, 0)))
                .sum();
    }

    /** Chance of a rating of a judge who shifts the scale. */
    private static double wineChance(String[] row, double[] theta, double warm, double contact, double judge) {
        double eta = (row[2].equals("warm") ? warm : 0) + (row[3].equals("yes") ? contact : 0) + judge;
        int rating = Integer.parseInt(row[1]);
        if (rating == 1) {
            return ProbitNode.of(1, 0).chance(Outcome.NONE, eta, theta[0]);
        }
        if (rating == 5) {
            return ProbitNode.of(1, 0).chance(Outcome.SEPARATED, eta, theta[3]);
        }
        return ProbitNode.of(1, theta[rating - 1] - theta[rating - 2]).chance(Outcome.PARTIAL, eta, theta[rating - 2]);
    }

    /** The same with a normal effect of each judge: messages of the judges, smoothed as the tree does (ordinal::clmm). */
    @Test
    void aNormalLevelAboveTheTrialsHasTheLikelihoodOfR() {
        double[] theta = {-0.92632544, 0.88935142, 2.46733346, 3.53635595};
        Grid grid = Grid.symmetric(0.05, 96);
        double total = 0;
        for (int judge = 1; judge <= 9; judge++) {
            String name = String.valueOf(judge);
            double[] likelihood = new double[grid.size()];
            for (int i = 0; i < likelihood.length; i++) {
                double shift = grid.node(i);
                likelihood[i] = ReferenceCases.table("published/wine-ordinal.csv").stream()
                        .filter(row -> row[5].equals(name))
                        .mapToDouble(row -> wineChance(row, theta, 1.79987220, 1.04811418, shift))
                        .reduce(1, (a, b) -> a * b);
            }
            double[] smooth = GaussianKernel.of(0.66302882, grid).likelihood(likelihood);
            total += StrictMath.log(smooth[96]);
        }
        assertThat(total).isCloseTo(-80.93129462, within(2e-4));
    }
}
