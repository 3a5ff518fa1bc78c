package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;

/**
 * The level above the flyer: against Markov chain Monte Carlo of all flyers at once by JAGS 4.3.1 (data, model, script, quantiles
 * and Monte Carlo errors under resources/reference/pool), and what must hold of it whatever was logged.
 */
class PoolTest {

    private static final double INPUT_SD = 0.05;
    private static final Priors BASE = Priors.standard();
    private static final double[] CHANCES = {0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95};
    /** As good as none of it: the chains know no base prior. */
    private static final double NO_BASE = 1e-9;
    /**
     * Accuracy asked for, in log charge ratio; ln σ and ln δ are read from nodes a third apart, so that σ and δ are good to 2 %.
     */
    private static final Map<String, Double> TOLERANCES =
            Map.of("mu", 0.003, "c", 0.003, "x99", 0.003, "ls", 0.02, "ld", 0.02);

    /** Monte Carlo standard errors allowed on top of the tolerance; they are themselves known to a quarter. */
    private static final double ERRORS = 4;

    private static List<FleetLog> flyers(int pool) {
        List<FleetLog> logs = new ArrayList<>();
        for (String[] cells : ReferenceCases.table("pool/trials.csv")) {
            if (Integer.parseInt(cells[0]) == pool) {
                int flyer = Integer.parseInt(cells[1]);
                Trial trial =
                        new Trial(Double.parseDouble(cells[2]), Outcome.valueOf(cells[3].toUpperCase(Locale.ROOT)));
                if (flyer > logs.size()) {
                    logs.add(log(List.of(trial)));
                } else {
                    List<Trial> trials = new ArrayList<>(trials(logs.get(flyer - 1)));
                    trials.add(trial);
                    logs.set(flyer - 1, log(trials));
                }
            }
        }
        return logs;
    }

    private static FleetLog log(List<Trial> trials) {
        return new FleetLog(List.of(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(INPUT_SD, trials)))))));
    }

    private static List<Trial> trials(FleetLog log) {
        return log.airframes().get(0).joints().get(0).setups().get(0).trials();
    }

    private static List<FlyerEvidence> evidence(List<FleetLog> logs) {
        return logs.stream().map(log -> FlyerEvidence.of(log, BASE)).toList();
    }

    private static FlyerPrior prior(List<FlyerPrior.Part> learned) {
        return FlyerPrior.of(learned, BASE);
    }

    /** The next flyer, who has tested nothing, and the first two, each with the others as prior and the own log once. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void quantilesAreThoseOfTheChains(int number) {
        List<FleetLog> logs = flyers(number);
        Pool pool = Pool.of(evidence(logs), BASE);
        List<String> misses = new ArrayList<>();
        for (String[] cells : ReferenceCases.table("pool/posterior.csv")) {
            if (Integer.parseInt(cells[0]) == number) {
                int flyer = Integer.parseInt(cells[1].replaceAll(".*\\[(\\d+)]", "$1")) - 1;
                String node = cells[1].replaceAll("\\[.*", "");
                DoubleUnaryOperator quantile = quantile(pool, logs, flyer, node);
                for (int i = 0; i < CHANCES.length; i++) {
                    double expected = Double.parseDouble(cells[2 + i]);
                    double tolerance =
                            TOLERANCES.get(node) + ERRORS * Double.parseDouble(cells[2 + CHANCES.length + i]);
                    double value = quantile.applyAsDouble(CHANCES[i]);
                    if (!(Math.abs(value - expected) <= tolerance)) {
                        misses.add(String.format(
                                Locale.ROOT,
                                "%s %.2f: %.5f, not %.5f ± %.5f",
                                cells[1],
                                CHANCES[i],
                                value,
                                expected,
                                tolerance));
                    }
                }
            }
        }
        assertThat(misses).isEmpty();
    }

    private static DoubleUnaryOperator quantile(Pool pool, List<FleetLog> logs, int flyer, String node) {
        boolean isNew = flyer == logs.size();
        FlyerPrior prior = FlyerPrior.of(isNew ? pool.learned() : pool.learnedWithout(flyer), BASE, NO_BASE);
        FleetModel model = FleetModel.of(isNew ? FleetLog.empty() : logs.get(flyer), BASE.with(prior));
        LeafPosterior leaf = model.leaf(isNew ? new Leaf.NewAirframe(INPUT_SD) : new Leaf.Logged(0, 0, 0));
        Hyperparameters shared = model.hyperparameters();
        return switch (node) {
            case "mu" -> shared::mean;
            case "ls" -> p -> Math.log(shared.scatter(p));
            case "ld" -> p -> Math.log(shared.band(p));
            case "c" -> leaf::correctionQuantile;
            case "x99" -> p -> leaf.ownLogRatioQuantile(p, 0.99);
            default -> throw new IllegalArgumentException(node);
        };
    }

    /** One normal that is the priors themselves changes nothing: the mixture is only another way to say it. */
    @Test
    void aPriorThatSaysWhatThePriorsSayAnswersAlike() {
        FlyerPrior same = new FlyerPrior(List.of(FlyerPrior.base(BASE, 1)));
        for (FleetLog log : flyers(2)) {
            LeafPosterior alone = FleetModel.of(log, BASE).leaf(new Leaf.Logged(0, 0, 0));
            LeafPosterior said = FleetModel.of(log, BASE.with(same)).leaf(new Leaf.Logged(0, 0, 0));
            for (double p : CHANCES) {
                assertThat(said.correctionQuantile(p)).isCloseTo(alone.correctionQuantile(p), within(1e-9));
                assertThat(said.logRatioFor(p)).isCloseTo(alone.logRatioFor(p), within(1e-9));
            }
        }
    }

    /** What a flyer logs is in no prior that this flyer is given: change it, and the prior stays but for the grid. */
    @Test
    void aFlyersOwnLogNeverComesBackAsPrior() {
        List<FleetLog> logs = new ArrayList<>(flyers(1));
        FlyerPrior before = prior(Pool.of(evidence(logs), BASE).learnedWithout(2));
        logs.set(2, log(List.of(new Trial(-0.9, Outcome.SEPARATED), new Trial(-0.8, Outcome.SEPARATED))));
        FlyerPrior after = prior(Pool.of(evidence(logs), BASE).learnedWithout(2));
        logs.remove(2);
        FlyerPrior absent = prior(Pool.of(evidence(logs), BASE).learned());
        for (double p : CHANCES) {
            assertThat(quantile(after, p)).isCloseTo(quantile(before, p), within(5e-4));
            assertThat(quantile(absent, p)).isCloseTo(quantile(before, p), within(5e-4));
        }
    }

    /** Quantile of μ by the mixture's distribution, written here anew. */
    private static double quantile(FlyerPrior prior, double p) {
        return new BrentSolver(1e-10)
                .solve(
                        200,
                        mu -> prior.parts().stream()
                                        .mapToDouble(part -> part.weight()
                                                * 0.5
                                                * Erf.erfc((part.mean() - mu)
                                                        / Math.sqrt(2
                                                                * part.covariance()
                                                                        .mean())))
                                        .sum()
                                - p,
                        -4,
                        4);
    }

    @Test
    void theOrderOfFlyersDoesNotMatterAndTheSameGivesTheSameBits() {
        List<FleetLog> logs = flyers(2);
        FlyerPrior once = prior(Pool.of(evidence(logs), BASE).learned());
        assertThat(prior(Pool.of(evidence(logs), BASE).learned())).isEqualTo(once);
        List<FleetLog> reversed = new ArrayList<>(logs);
        Collections.reverse(reversed);
        FlyerPrior other = prior(Pool.of(evidence(reversed), BASE).learned());
        for (double p : CHANCES) {
            assertThat(quantile(other, p)).isCloseTo(quantile(once, p), within(1e-9));
        }
    }

    /** With many flyers drawn alike the pool finds what they share: mean, scatter and band. */
    @Test
    void manyFlyersTeachWhatTheyShare() {
        Random random = new Random(5);
        List<FleetLog> logs = IntStream.range(0, 60)
                .mapToObj(i -> {
                    double c = 0.3 + 0.05 * random.nextGaussian();
                    List<Trial> trials = new ArrayList<>();
                    for (int t = 0; t < 12; t++) {
                        double x = c + 0.2 * random.nextGaussian();
                        double z = x - c + 0.05 * random.nextGaussian();
                        trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < 0.25 ? Outcome.PARTIAL : Outcome.SEPARATED));
                    }
                    return log(trials);
                })
                .toList();
        Hyperparameters learned = FleetModel.of(
                        FleetLog.empty(),
                        BASE.with(FlyerPrior.of(Pool.of(evidence(logs), BASE).learned(), BASE, NO_BASE)))
                .hyperparameters();
        assertThat(learned.mean(0.5)).isCloseTo(0.3, within(0.05));
        assertThat(learned.scatter(0.5)).isBetween(0.04, 0.065);
        assertThat(learned.band(0.5)).isBetween(0.22, 0.29);
    }
}
