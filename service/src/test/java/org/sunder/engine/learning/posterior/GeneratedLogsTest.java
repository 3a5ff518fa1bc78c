package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.sunder.Thorough;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.SpeedCurve;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;

/** What must hold of any log: answers are finite, a further test never teaches the contrary, and names and order say nothing. */
class GeneratedLogsTest {

    private static final Priors PRIORS = Priors.standard();
    private static final SpeedCurve CURVE =
            new SpeedCurve(-1, 2, List.of(StrictMath.log(10) - 1, StrictMath.log(10) + 1));
    private static final Leaf.Logged FIRST = new Leaf.Logged(0, 0, 0);
    private static final int MANY = Thorough.count(60, 100, 300);

    /** Logs that no planner would lead to. */
    private static Map<String, AirframeLog> odd() {
        Map<String, AirframeLog> odd = new LinkedHashMap<>();
        odd.put("hundreds separated", joint(times(MANY, i -> new Trial(0.1, Outcome.SEPARATED))));
        odd.put("hundreds none", joint(times(MANY, i -> new Trial(0.1, Outcome.NONE))));
        odd.put("hundreds partial", joint(times(MANY, i -> new Trial(0.1, Outcome.PARTIAL))));
        odd.put("a thousandth of the handbook charge parts it", joint(List.of(new Trial(-6.9, Outcome.SEPARATED))));
        odd.put("a thousand times the handbook charge does not", joint(List.of(new Trial(6.9, Outcome.NONE))));
        odd.put(
                "against all sense",
                joint(times(60, i -> new Trial(i % 2 == 0 ? 3 : -3, i % 2 == 0 ? Outcome.NONE : Outcome.SEPARATED))));
        odd.put("every speed measured", joint(times(40, i -> fast(0.1, 8 + i % 5))));
        odd.put("speeds that cannot be", joint(times(4, i -> fast(0.1, i % 2 == 0 ? 0.01 : 1000))));
        odd.put(
                "many setups",
                new AirframeLog(List.of(new JointLog(times(
                        MANY / 10, i -> new SetupLog(0.05, List.of(new Trial(i / 30.0 - 0.3, outcome(i)))))))));
        odd.put(
                "eight joints",
                new AirframeLog(times(
                        8, i -> new JointLog(List.of(new SetupLog(0.05, List.of(new Trial(0.1, outcome(i)))))))));
        return odd;
    }

    private static Outcome outcome(int i) {
        return List.of(Outcome.values()).get(i % 3);
    }

    private static Trial fast(double x, double metresPerSecond) {
        return new Trial(x, Outcome.SEPARATED, new SpeedReading(StrictMath.log(metresPerSecond), CURVE));
    }

    private static <T> List<T> times(int count, IntFunction<T> one) {
        return IntStream.range(0, count).mapToObj(one).toList();
    }

    private static AirframeLog joint(List<Trial> trials) {
        return new AirframeLog(List.of(new JointLog(List.of(new SetupLog(0.05, trials)))));
    }

    @Test
    void answersStayFinite() {
        odd().forEach((name, airframe) -> {
            FleetModel model = FleetModel.of(new FleetLog(List.of(airframe)), PRIORS);
            assertThat(model.logMarginalLikelihood()).as(name).isFinite();
            for (Leaf leaf : List.of(
                    FIRST, new Leaf.NewSetup(0, 0, 0.05), new Leaf.NewJoint(0, 0.05), new Leaf.NewAirframe(0.05))) {
                LeafPosterior known = model.leaf(leaf);
                String what = name + ", " + leaf;
                assertThat(known.correctionSd()).as(what).isFinite().isPositive();
                assertThat(known.scatterMean()).as(what).isFinite().isPositive();
                assertThat(known.bandMean()).as(what).isFinite().isPositive();
                assertThat(known.correctionQuantile(0.05))
                        .as(what)
                        .isFinite()
                        .isLessThan(known.correctionQuantile(0.95));
                assertThat(known.logRatioFor(0.99)).as(what).isFinite().isGreaterThan(known.logRatioFor(0.5));
                for (double x = -7; x <= 7; x += 1) {
                    assertThat(known.pNone(x) + known.pPartial(x) + known.pSeparated(x))
                            .as(what)
                            .isCloseTo(1, within(1e-7)); // scatters and bands of next to no mass are left out
                    assertThat(known.pNone(x)).as(what).isBetween(0.0, 1.0);
                    assertThat(known.pSeparated(x)).as(what).isBetween(0.0, 1.0);
                }
            }
        });
    }

    /**
     * With the chance p of separating at x, which what is unknown makes uncertain, a further separated there makes its mean
     * E p + a·Var p / E(a p + b), never less (Bayes' rule; a lapse mixes in a constant).
     */
    @Test
    void aFurtherSeparatedNeverLowersTheChanceOfSeparatingThere() {
        Random random = new Random(31);
        for (int i = 0; i < Thorough.count(2, 5, 60); i++) {
            LeafPosterior known = FleetModel.of(drawn(random), PRIORS).leaf(FIRST);
            double x = 1.2 * random.nextDouble() - 0.5;
            LeafPosterior more = known.after(new Trial(x, Outcome.SEPARATED));
            assertThat(more.pSeparated(x)).isGreaterThanOrEqualTo(known.pSeparated(x) - 1e-12);
        }
    }

    @Test
    void aFurtherNoneNeverRaisesTheChanceOfSeparatingThere() {
        Random random = new Random(32);
        for (int i = 0; i < Thorough.count(2, 5, 60); i++) {
            LeafPosterior known = FleetModel.of(drawn(random), PRIORS).leaf(FIRST);
            double x = 1.2 * random.nextDouble() - 0.5;
            LeafPosterior more = known.after(new Trial(x, Outcome.NONE));
            assertThat(more.pSeparated(x)).as("log %d at %s", i, x).isLessThanOrEqualTo(known.pSeparated(x) + 1e-12);
        }
    }

    @Test
    void namesAndOrderSayNothing() {
        Random random = new Random(33);
        for (int i = 0; i < Thorough.count(1, 2, 10); i++) {
            FleetLog log = drawn(random);
            double charge = FleetModel.of(log, PRIORS).leaf(FIRST).logRatioFor(0.99);
            int joints = log.airframes().get(0).joints().size();
            List<JointLog> turned = new ArrayList<>(log.airframes().get(0).joints());
            Collections.reverse(turned);
            List<AirframeLog> airframes = new ArrayList<>(log.airframes());
            airframes.set(0, new AirframeLog(turned));
            Collections.reverse(airframes);
            Leaf there = new Leaf.Logged(airframes.size() - 1, joints - 1, 0);
            assertThat(FleetModel.of(new FleetLog(airframes), PRIORS)
                            .leaf(there)
                            .logRatioFor(0.99))
                    .isCloseTo(charge, within(1e-9));
        }
    }

    /** One to three airframes of one or two joints, one or two setups each, with up to six trials of a truth of their own. */
    private static FleetLog drawn(Random random) {
        return new FleetLog(times(1 + random.nextInt(3), a -> {
            double c = 0.1 + 0.3 * random.nextGaussian();
            return new AirframeLog(times(
                    1 + random.nextInt(2),
                    j -> new JointLog(times(1 + random.nextInt(2), s -> new SetupLog(0.05, trials(random, c))))));
        }));
    }

    private static List<Trial> trials(Random random, double c) {
        return times(random.nextInt(7), i -> {
            double x = c + 0.1 + 0.25 * random.nextGaussian();
            double z = x - c + 0.1 * random.nextGaussian();
            Outcome outcome = z < 0 ? Outcome.NONE : z < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED;
            boolean measured = outcome == Outcome.SEPARATED && random.nextInt(4) == 0;
            return measured ? fast(x, 10 * StrictMath.exp(x - c)) : new Trial(x, outcome);
        });
    }
}
