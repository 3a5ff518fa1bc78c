package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.model.Leaf;

/** The tree's posterior against the nested quadrature of the same model in another language. */
class ReferencePosteriorTest {

    private static final double[] CHANCES = {0.025, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.975};

    private static final Map<String, FleetModel> FINE = new HashMap<>();
    private static final Map<String, FleetModel> STANDARD = new HashMap<>();

    /** Computed once: several tests look at the same. */
    private static FleetModel fine(String name) {
        return FINE.computeIfAbsent(
                name,
                log -> FleetModel.of(
                        ReferenceCases.log(log),
                        ReferenceCases.PRIORS,
                        ReferenceCases.fine(ReferenceCases.PRIORS, 0.0125)));
    }

    private static FleetModel standard(String name) {
        return STANDARD.computeIfAbsent(name, log -> FleetModel.of(ReferenceCases.log(log), ReferenceCases.PRIORS));
    }

    /** Columns: case; tolerance of quantiles within 5 to 95 %, beyond, of means of σ and δ, of chances. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.003, 0.006, 0.001, 0.001", "A, 0.003, 0.006, 0.001, 0.001",
        "B, 0.003, 0.006, 0.001, 0.001", "C, 0.003, 0.006, 0.001, 0.001"
    })
    void fineDesignReproducesTheReference(String name, double inner, double outer, double means, double chances) {
        compare(name, fine(name), inner, outer, means, chances);
    }

    /** The tolerances are the accuracy measured for the standard design, rounded up. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.002, 0.0035, 0.001, 0.002", "A, 0.002, 0.0035, 0.001, 0.002",
        "B, 0.002, 0.0035, 0.001, 0.002", "C, 0.002, 0.0035, 0.001, 0.002"
    })
    void standardDesignStaysNearTheReference(String name, double inner, double outer, double means, double chances) {
        compare(name, standard(name), inner, outer, means, chances);
    }

    /** Quantiles of what the groups share: tolerance 0.001 for σ and δ, 0.002 for τ, 0.003 for μ (0.006 at the ends). */
    @ParameterizedTest
    @ValueSource(strings = {"0", "A", "B", "C"})
    void whatTheGroupsShareHasTheReferencesQuantiles(String name) {
        shared(name, fine(name), 0.001, 0.002, 0.003);
        shared(name, standard(name), 0.002, 0.004, 0.004);
    }

    private static void shared(String name, FleetModel model, double strength, double spread, double mean) {
        Hyperparameters shared = model.hyperparameters();
        Map<String, DoubleUnaryOperator> quantiles = Map.of(
                "sigma", shared::scatter, "delta", shared::band, "tau", shared::airframeSpread, "mu", shared::mean);
        Map<String, Double> tolerances = Map.of("sigma", strength, "delta", strength, "tau", spread, "mu", mean);
        List<String> misses = new ArrayList<>();
        int compared = 0;
        for (String[] cells : ReferenceCases.rows("quadrature-posterior.csv")) {
            if (cells[0].equals(name) && quantiles.containsKey(cells[1])) {
                for (int i = 0; i < CHANCES.length; i++, compared++) {
                    double value = quantiles.get(cells[1]).applyAsDouble(CHANCES[i]);
                    double tolerance = tolerances.get(cells[1]) * (i == 0 || i == 8 ? 2 : 1);
                    note(misses, cells[1] + " " + CHANCES[i], value, cells[3 + i], tolerance);
                }
            }
        }
        assertThat(misses).isEmpty();
        assertThat(compared).isEqualTo(4 * CHANCES.length);
    }

    /** Log probability of the outcomes in the order listed, from the same quadrature. */
    @ParameterizedTest
    @CsvSource({"A, -17.94318", "B, -1.33578", "C, -0.53149"})
    void marginalLikelihoodIsTheReferences(String name, double expected) {
        assertThat(fine(name).logMarginalLikelihood()).isCloseTo(expected, within(1e-3));
        assertThat(standard(name).logMarginalLikelihood()).isCloseTo(expected, within(0.02));
    }

    private static void compare(
            String name, FleetModel model, double inner, double outer, double means, double chances) {
        List<String> misses = new ArrayList<>();
        assertThat(ReferenceCases.rows("quadrature-posterior.csv"))
                .as("the reference has this case")
                .anyMatch(row -> row[0].equals(name));
        assertThat(ReferenceCases.rows("quadrature-predictive.csv")).anyMatch(row -> row[0].equals(name));
        for (String[] cells : ReferenceCases.rows("quadrature-posterior.csv")) {
            if (cells[0].equals(name)) {
                quantiles(model, cells, inner, outer, means, misses);
            }
        }
        for (String[] cells : ReferenceCases.rows("quadrature-predictive.csv")) {
            if (cells[0].equals(name)) {
                LeafPosterior leaf = leaf(model, cells[1]);
                double x = StrictMath.log(Double.parseDouble(cells[2]));
                note(misses, String.join(",", cells) + " none", leaf.pNone(x), cells[3], chances);
                note(misses, String.join(",", cells) + " full", leaf.pSeparated(x), cells[4], chances);
            }
        }
        assertThat(misses).isEmpty();
    }

    private static void quantiles(
            FleetModel model, String[] cells, double inner, double outer, double means, List<String> misses) {
        String node = cells[1];
        LeafPosterior leaf =
                leaf(model, node.replaceAll("\\D+(99)?|new", "").isEmpty() ? "new" : node.replaceAll("x99|\\D", ""));
        if (node.equals("sigma")) {
            note(misses, "sigma", leaf.scatterMean(), cells[2], means);
        } else if (node.equals("delta")) {
            note(misses, "delta", leaf.bandMean(), cells[2], means);
        } else if (node.startsWith("c") || node.startsWith("x99")) {
            for (int i = 0; i < CHANCES.length; i++) {
                double value = node.startsWith("c")
                        ? leaf.correctionQuantile(CHANCES[i])
                        : leaf.ownLogRatioQuantile(CHANCES[i], 0.99);
                note(misses, node + " " + CHANCES[i], value, cells[3 + i], i == 0 || i == 8 ? outer : inner);
            }
        }
    }

    private static LeafPosterior leaf(FleetModel model, String group) {
        return model.leaf(
                group.equals("new") ? new Leaf.NewAirframe(0) : new Leaf.Logged(Integer.parseInt(group) - 1, 0, 0));
    }

    private static void note(List<String> misses, String what, double value, String expected, double tolerance) {
        double error = Math.abs(value - Double.parseDouble(expected));
        if (!(error <= tolerance)) {
            misses.add("%s: %.6f instead of %s".formatted(what, value, expected));
        }
    }
}
