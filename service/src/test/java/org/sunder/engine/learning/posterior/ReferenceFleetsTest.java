package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.Thorough;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;

/**
 * The whole tree, lapse included, against Markov chain Monte Carlo of the same model: ten fleets of 2 to 6 airframes with
 * one or two joints and setups each, posteriors by JAGS 4.3.1 (data, model, script, quantiles and Monte Carlo errors under
 * resources/reference/fleets).
 */
class ReferenceFleetsTest {

    static final double[] CHANCES = {0.025, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.975};
    /** Monte Carlo standard errors allowed on top of the tolerance; they are themselves known to a quarter. */
    private static final double ERRORS = 4;

    /** Accuracy asked for: corrections and 99 % charges; twice that at 2.5 and 97.5 %. */
    private static final Map<String, Double> TOLERANCES = Map.of(
            "c",
            0.003,
            "x99",
            0.003,
            "cnew",
            0.004,
            "mu",
            0.004,
            "sigma",
            0.001,
            "delta",
            0.0015,
            "tauAirframe",
            0.004,
            "tauJoint",
            0.02,
            "tauSetup",
            0.02);

    /** All of them, or one without repeated setups, one where little but joints repeat, and the one where most repeats. */
    static IntStream fleets() {
        return Thorough.on() ? IntStream.rangeClosed(1, 10) : IntStream.of(2, 6, 9);
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void quantilesAreThoseOfTheChains(int fleet) {
        Map<String, Leaf> leaves = new TreeMap<>();
        FleetModel model = FleetModel.of(log(fleet, leaves), Priors.standard());
        Hyperparameters shared = model.hyperparameters();
        List<String> misses = new ArrayList<>();
        List<String[]> rows = ReferenceCases.table("fleets/posterior-" + fleet + ".csv");
        for (String[] cells : rows) {
            String node = cells[1];
            DoubleUnaryOperator quantile = quantile(model, shared, leaves, node);
            for (int i = 0; i < CHANCES.length; i++) {
                double expected = Double.parseDouble(cells[3 + i]);
                double tolerance = TOLERANCES.get(node.replaceAll("\\[.*", "")) * (i == 0 || i == 8 ? 2 : 1)
                        + ERRORS * Double.parseDouble(cells[13 + i]);
                double value = quantile.applyAsDouble(CHANCES[i]);
                if (!(Math.abs(value - expected) <= tolerance)) {
                    misses.add(String.format(
                            Locale.ROOT,
                            "%s %.3f: %.5f, not %.5f ± %.5f",
                            node,
                            CHANCES[i],
                            value,
                            expected,
                            tolerance));
                }
            }
        }
        assertThat(misses).isEmpty();
        assertThat(rows).hasSizeGreaterThan(10);
    }

    static DoubleUnaryOperator quantile(
            FleetModel model, Hyperparameters shared, Map<String, Leaf> leaves, String node) {
        if (node.contains("[")) {
            LeafPosterior leaf = model.leaf(leaves.get(node.replaceAll(".*\\[|]", "")));
            return node.startsWith("c") ? leaf::correctionQuantile : p -> leaf.ownLogRatioQuantile(p, 0.99);
        }
        return switch (node) {
            case "cnew" -> model.leaf(new Leaf.NewAirframe(0.05))::correctionQuantile;
            case "mu" -> shared::mean;
            case "sigma" -> shared::scatter;
            case "delta" -> shared::band;
            case "tauAirframe" -> shared::airframeSpread;
            case "tauJoint" -> shared::jointSpread;
            case "tauSetup" -> shared::setupSpread;
            default -> throw new IllegalArgumentException(node);
        };
    }

    /** The log of a fleet; fills in which leaf each setup, counted from 1 in the order listed, is. */
    static FleetLog log(int fleet, Map<String, Leaf> leaves) {
        return log(
                "fleets/trials.csv",
                fleet,
                leaves,
                cells -> new Trial(Double.parseDouble(cells[5]), Outcome.valueOf(cells[6].toUpperCase(Locale.ROOT))));
    }

    static FleetLog log(String table, int fleet, Map<String, Leaf> leaves, Function<String[], Trial> trials) {
        Map<Integer, Map<Integer, Map<Integer, SetupLog>>> tree = new TreeMap<>();
        for (String[] cells : ReferenceCases.table(table)) {
            if (Integer.parseInt(cells[0]) == fleet) {
                Trial trial = trials.apply(cells);
                tree.computeIfAbsent(Integer.valueOf(cells[1]), airframe -> new TreeMap<>())
                        .computeIfAbsent(Integer.valueOf(cells[2]), joint -> new TreeMap<>())
                        .merge(
                                Integer.valueOf(cells[3]),
                                new SetupLog(Double.parseDouble(cells[4]), List.of(trial)),
                                ReferenceFleetsTest::joined);
            }
        }
        List<AirframeLog> airframes = new ArrayList<>();
        for (Map<Integer, Map<Integer, SetupLog>> joints : tree.values()) {
            List<JointLog> joint = new ArrayList<>();
            for (Map<Integer, SetupLog> setups : joints.values()) {
                for (int s = 0; s < setups.size(); s++) {
                    leaves.put(String.valueOf(leaves.size() + 1), new Leaf.Logged(airframes.size(), joint.size(), s));
                }
                joint.add(new JointLog(List.copyOf(setups.values())));
            }
            airframes.add(new AirframeLog(joint));
        }
        return new FleetLog(airframes);
    }

    private static SetupLog joined(SetupLog before, SetupLog more) {
        List<Trial> trials = new ArrayList<>(before.trials());
        trials.addAll(more.trials());
        return new SetupLog(before.inputSd(), trials);
    }
}
