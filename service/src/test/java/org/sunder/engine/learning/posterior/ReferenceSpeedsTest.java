package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SpeedCurve;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;

/**
 * Readings of speed of different quality, their shared bias and the whole tree, lapse included, against Markov chain Monte Carlo
 * of the same model: posteriors by JAGS 4.3.1 (data, model, script, quantiles and Monte Carlo errors under
 * resources/reference/speeds).
 */
class ReferenceSpeedsTest {

    /** ln v rises by 1 per unit of x − c, from 10 m/s at the threshold. */
    private static final SpeedCurve CURVE =
            new SpeedCurve(-4, 8, List.of(StrictMath.log(10) - 4, StrictMath.log(10) + 4));

    /** Corrections and 99 % charges of setups, tested or not. */
    private static final double TOLERANCE = 0.003;

    /** Monte Carlo standard errors allowed on top of the tolerance; they are themselves known to a quarter. */
    private static final double ERRORS = 4;

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void quantilesAreThoseOfTheChains(int fleet) {
        Map<String, Leaf> leaves = new TreeMap<>();
        FleetLog log = ReferenceFleetsTest.log("speeds/trials.csv", fleet, leaves, ReferenceSpeedsTest::trial);
        FleetModel model = FleetModel.of(log, Priors.standard());
        Hyperparameters shared = model.hyperparameters();
        List<String> misses = new ArrayList<>();
        int compared = 0;
        for (String[] cells : ReferenceCases.table("speeds/posterior-" + fleet + ".csv")) {
            String node = cells[1];
            if (!node.startsWith("c") && !node.startsWith("x99")) {
                continue; // what all joints share has tests of its own, and of the bias nothing is answered
            }
            compared++;
            var quantile = ReferenceFleetsTest.quantile(model, shared, leaves, node);
            for (int i = 0; i < ReferenceFleetsTest.CHANCES.length; i++) {
                double expected = Double.parseDouble(cells[3 + i]);
                double tolerance = TOLERANCE * (i == 0 || i == 8 ? 2 : 1) + ERRORS * Double.parseDouble(cells[13 + i]);
                double value = quantile.applyAsDouble(ReferenceFleetsTest.CHANCES[i]);
                if (!(Math.abs(value - expected) <= tolerance)) {
                    misses.add(String.format(
                            Locale.ROOT,
                            "%s %.3f: %.5f, not %.5f ± %.5f",
                            node,
                            ReferenceFleetsTest.CHANCES[i],
                            value,
                            expected,
                            tolerance));
                }
            }
        }
        assertThat(misses).isEmpty();
        assertThat(compared).isGreaterThanOrEqualTo(3);
    }

    private static Trial trial(String[] cells) {
        double x = Double.parseDouble(cells[5]);
        Outcome outcome = Outcome.valueOf(cells[6].toUpperCase(Locale.ROOT));
        return cells.length < 9 || cells[7].isEmpty()
                ? new Trial(x, outcome)
                : new Trial(
                        x,
                        outcome,
                        new SpeedReading(
                                StrictMath.log(Double.parseDouble(cells[7])), Double.parseDouble(cells[8]), CURVE));
    }
}
