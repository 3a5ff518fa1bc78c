package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
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
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * Readings of any quality are worked out as by nodes of the bias that lie closer than any reading can tell apart. Scatter and
 * band are known here: the bias is summed within each of their nodes by itself.
 */
class BiasNodesTest {

    private static final Priors PRIORS = new Priors(0.30, 0.25, 0.15, 0.10, 0.10, 0, 0.15, 0, 0.02);
    /** 0.0135 apart, less than half of what five readings of 3 % leave. */
    private static final List<Node> DENSE = QuadratureRules.normal(0.09, 42);

    private static final double[] CHANCES = {0.05, 0.25, 0.5, 0.75, 0.95};

    /** ln v rises by 1 per unit of x − c, from 10 m/s at the threshold. */
    private static final SpeedCurve CURVE = new SpeedCurve(-3, 6, List.of(Math.log(10) - 3, Math.log(10) + 3));

    private static Trial fast(double x, double metresPerSecond, double sd) {
        return new Trial(x, Outcome.SEPARATED, new SpeedReading(StrictMath.log(metresPerSecond), sd, CURVE));
    }

    private static Trial silent(double x, Outcome outcome) {
        return new Trial(x, outcome);
    }

    private static JointLog joint(Trial... trials) {
        return new JointLog(List.of(new SetupLog(0.05, List.of(trials))));
    }

    private static AirframeLog airframe(JointLog... joints) {
        return new AirframeLog(List.of(joints));
    }

    private static FleetLog fleet(AirframeLog... airframes) {
        return new FleetLog(List.of(airframes));
    }

    static Stream<Arguments> fleets() {
        Trial none = silent(-0.2, Outcome.NONE);
        return Stream.of(
                Arguments.of("one of 10 %", fleet(airframe(joint(none, fast(0.1, 12, 0.10))))),
                Arguments.of("one of 3 %", fleet(airframe(joint(none, fast(0.1, 12, 0.03))))),
                Arguments.of("one of 3 % beyond all bias", fleet(airframe(joint(none, fast(0.1, 25, 0.03))))),
                Arguments.of(
                        "one of 3 % and one of 50 %",
                        fleet(airframe(joint(none, fast(0.1, 12, 0.03), fast(0.1, 8, 0.50))))),
                Arguments.of(
                        "four of 10 %",
                        fleet(airframe(joint(
                                none, fast(0.1, 12, 0.1), fast(0.1, 11, 0.1), fast(0.05, 11, 0.1), fast(0, 10, 0.1))))),
                Arguments.of(
                        "five of 3 to 5 %",
                        fleet(airframe(joint(
                                none,
                                fast(0.1, 12, 0.03),
                                fast(0.1, 11.8, 0.03),
                                fast(0.05, 11.2, 0.04),
                                fast(0, 10.9, 0.05),
                                fast(0, 10.7, 0.03))))),
                Arguments.of(
                        "two joints of 4 %",
                        fleet(airframe(joint(none, fast(0.1, 12, 0.04)), joint(none, fast(0.2, 11, 0.04))))),
                Arguments.of(
                        "five airframes of 5 %",
                        fleet(
                                airframe(joint(none, fast(0.1, 12, 0.05))),
                                airframe(joint(silent(0.05, Outcome.PARTIAL), fast(0.2, 13, 0.05))),
                                airframe(joint(fast(0.0, 12, 0.05), silent(-0.1, Outcome.PARTIAL))),
                                airframe(joint(fast(-0.2, 9, 0.05))),
                                airframe(joint(silent(0, Outcome.NONE), fast(0.3, 14, 0.05))))),
                Arguments.of(
                        "readings that contradict each other",
                        fleet(airframe(joint(none, fast(0.1, 16, 0.04))), airframe(joint(none, fast(0.1, 8, 0.04))))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fleets")
    void answersAreThoseOfNodesWithoutNumber(String name, FleetLog log) {
        Design design = Design.standard(PRIORS, log);
        FleetModel model = FleetModel.of(log, PRIORS);
        FleetModel dense = FleetModel.of(log, new Hierarchy(PRIORS, design, DENSE));
        for (Leaf leaf : List.of(
                new Leaf.Logged(0, 0, 0),
                new Leaf.NewSetup(0, 0, 0.05),
                new Leaf.NewJoint(0, 0.05),
                new Leaf.NewAirframe(0.05))) {
            LeafPosterior found = model.leaf(leaf);
            LeafPosterior expected = dense.leaf(leaf);
            // What was answered before readings had a quality of their own stays as it was.
            double allowed = name.equals("one of 10 %") ? 0.004 : 0.003;
            for (double p : CHANCES) {
                assertThat(found.correctionQuantile(p))
                        .as("%s, %s, quantile %s", name, leaf, p)
                        .isCloseTo(expected.correctionQuantile(p), within(allowed));
            }
            assertThat(found.logRatioFor(0.99)).isCloseTo(expected.logRatioFor(0.99), within(0.003));
            assertThat(found.logMarginalLikelihood()).isCloseTo(expected.logMarginalLikelihood(), within(0.05));
        }
    }

    /** What the readings of a joint need is what is used, and never fewer than the rest of the fleet may need. */
    @Test
    void finerReadingsGetMoreNodes() {
        FleetLog fine = fleet(airframe(joint(fast(0.1, 12, 0.05))));
        Hierarchy levels = new Hierarchy(PRIORS, Design.standard(PRIORS, fine), BiasNodes.kept(fine));
        assertThat(nodes(levels, 0.10)).isEqualTo(17);
        assertThat(nodes(levels, 0.03, 0.03, 0.03, 0.03)).isGreaterThan(nodes(levels, 0.10));
        assertThat(nodes(
                        levels,
                        Collections.nCopies(100, 0.03).stream()
                                .mapToDouble(sd -> sd)
                                .toArray()))
                .isEqualTo(41);
    }

    /** A log of before, of one speed at a joint that came without its own quality, is answered as it was. */
    @Test
    void oneUsualReadingAJointKeepsItsNodes() {
        FleetLog usual = fleet(airframe(joint(fast(0.1, 12, SpeedReading.USUAL_SD)), joint(fast(0, 9, 0.2))));
        assertThat(BiasNodes.kept(usual)).isEqualTo(QuadratureRules.normalGauss(5));
        assertThat(BiasNodes.kept(fleet(usual.airframes().get(0), airframe(joint(fast(0, 9, 0.05))))))
                .hasSize(11);
        Hierarchy levels = new Hierarchy(PRIORS, Design.standard(PRIORS, usual), BiasNodes.kept(usual));
        assertThat(BiasNodes.of(levels, usual.airframes().get(0)).finer()).isFalse();
    }

    /** The first fine reading changes the nodes, the last one taken back gives the old ones again, to the last bit. */
    @Test
    void theFirstFineReadingAndTheLastAreAsAModelMadeAnew() {
        AirframeLog other = airframe(joint(silent(-0.1, Outcome.NONE), fast(0.2, 13, 0.10)));
        FleetLog usual = fleet(other, airframe(joint(fast(0.1, 12, 0.10))));
        FleetLog fine = fleet(other, airframe(joint(fast(0.1, 12, 0.04))));
        Leaf leaf = new Leaf.Logged(0, 0, 0);
        FleetModel grown = FleetModel.of(usual, PRIORS).changedTo(fine);
        assertThat(grown.leaf(leaf).correctionQuantile(0.5))
                .isEqualTo(FleetModel.of(fine, PRIORS).leaf(leaf).correctionQuantile(0.5));
        assertThat(grown.changedTo(usual).leaf(leaf).correctionQuantile(0.5))
                .isEqualTo(FleetModel.of(usual, PRIORS).leaf(leaf).correctionQuantile(0.5));
    }

    /** What no speed was measured of costs what it did: one node, and none of its own. */
    @Test
    void withoutSpeedsNothingIsAdded() {
        AirframeLog silent = airframe(joint(silent(0.1, Outcome.SEPARATED)));
        Hierarchy levels = new Hierarchy(PRIORS, Design.standard(PRIORS, fleet(silent)), BiasNodes.kept(fleet(silent)));
        BiasNodes nodes = BiasNodes.of(levels, silent);
        assertThat(nodes.finer()).isFalse();
        assertThat(nodes.perStrength()).isOne();
        assertThat(nodes.own()).isEqualTo(levels.probits());
    }

    private static int nodes(Hierarchy levels, double... sds) {
        Trial[] trials = Arrays.stream(sds).mapToObj(sd -> fast(0.1, 12, sd)).toArray(Trial[]::new);
        return BiasNodes.of(levels, airframe(joint(trials))).perStrength();
    }

    /** A finer reading of what all else says too leaves less in doubt; of what nothing else says, the bias stays. */
    @Test
    void aFinerReadingTellsMore() {
        double before = width(fast(0.1, 12, 0.30));
        for (double sd : new double[] {0.10, 0.05, 0.03}) {
            double now = width(fast(0.1, 12, sd));
            assertThat(now).isLessThan(before);
            before = now;
        }
    }

    private static double width(Trial reading) {
        FleetModel model = FleetModel.of(fleet(airframe(joint(silent(-0.2, Outcome.NONE), reading))), PRIORS);
        return model.leaf(new Leaf.Logged(0, 0, 0)).correctionSd();
    }

    @Test
    void orderOfReadingsChangesNoBit() {
        Trial[] trials = {fast(0.1, 12, 0.03), fast(0.1, 12, 0.07), fast(0.1, 11, 0.05), silent(0, Outcome.PARTIAL)};
        double forth = median(trials);
        Collections.reverse(Arrays.asList(trials));
        assertThat(median(trials)).isEqualTo(forth);
    }

    private static double median(Trial... trials) {
        return FleetModel.of(fleet(airframe(joint(trials))), PRIORS)
                .leaf(new Leaf.Logged(0, 0, 0))
                .correctionQuantile(0.5);
    }

    /** A trial taken into a posterior is the posterior of the log with it. */
    @Test
    void aReadingMoreAtALeafIsTheWholeTreesAnswer() {
        Trial reading = fast(0.1, 12, 0.05);
        SetupLog setup = new SetupLog(0.05, List.of(silent(-0.2, Outcome.NONE), fast(0.2, 13, 0.04)));
        AirframeLog had = airframe(new JointLog(List.of(setup)));
        AirframeLog has = airframe(new JointLog(List.of(setup.with(reading))));
        LeafPosterior whole = FleetModel.of(fleet(has), PRIORS).leaf(new Leaf.Logged(0, 0, 0));
        LeafPosterior without = whole.without(reading);
        LeafPosterior before = FleetModel.of(fleet(had), PRIORS).leaf(new Leaf.Logged(0, 0, 0));
        assertThat(without.correctionQuantile(0.5)).isCloseTo(before.correctionQuantile(0.5), within(0.003));
        assertThat(without.correctionSd()).isCloseTo(before.correctionSd(), within(0.003));
    }
}
