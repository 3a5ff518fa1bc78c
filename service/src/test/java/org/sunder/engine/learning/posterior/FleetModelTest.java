package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
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

/** What a tree of airframes, joints and setups must do whatever the numbers. */
class FleetModelTest {

    private static final Priors STANDARD = Priors.standard();
    private static final List<Outcome> OUTCOMES = List.of(Outcome.values());

    private static SetupLog setup(double inputSd, Trial... trials) {
        return new SetupLog(inputSd, List.of(trials));
    }

    private static Trial trial(double ratio, Outcome outcome) {
        return new Trial(StrictMath.log(ratio), outcome);
    }

    /** Two airframes; the first with two joints, one of them in two setups. */
    private static FleetLog fleet() {
        JointLog first = new JointLog(List.of(
                setup(0.05, trial(0.8, Outcome.NONE), trial(1.1, Outcome.PARTIAL), trial(1.3, Outcome.SEPARATED)),
                setup(0.10, trial(1.2, Outcome.SEPARATED))));
        JointLog second = new JointLog(List.of(setup(0, trial(1.0, Outcome.NONE), trial(1.4, Outcome.SEPARATED))));
        JointLog other = new JointLog(List.of(setup(0.05, trial(0.9, Outcome.SEPARATED))));
        return new FleetLog(List.of(new AirframeLog(List.of(first, second)), new AirframeLog(List.of(other))));
    }

    /** Variances of independent terms add, and a half-normal τ of scale s has mean square s². */
    @Test
    void untestedAirframeHasThePriorsVariance() {
        double expected = 0.30 * 0.30 + 0.25 * 0.25 + 0.15 * 0.15 + 0.10 * 0.10 + 0.2 * 0.2;
        LeafPosterior leaf = FleetModel.of(FleetLog.empty(), STANDARD).leaf(new Leaf.NewAirframe(0.2));
        assertThat(leaf.correctionSd()).isCloseTo(StrictMath.sqrt(expected), within(0.002));
        assertThat(leaf.correctionMean()).isCloseTo(0, within(1e-9));
        assertThat(leaf.diagnostics().edgeMass()).isLessThan(1e-4);
    }

    /** A new setup of a joint stands where one that is logged without a trial would. */
    @Test
    void aNewSetupIsKnownAsOneLoggedButUntested() {
        for (FleetLog log : List.of(fleet(), fleetWithSpeeds())) {
            FleetModel model = FleetModel.of(log, STANDARD);
            NewSetups joint = model.newSetups(0, 0);
            for (double inputSd : List.of(0.05, 0.0, 0.2).subList(0, Thorough.count(1, 1, 3))) {
                AirframeLog airframe = log.airframes().get(0);
                JointLog first = airframe.joints().get(0);
                List<SetupLog> setups = new ArrayList<>(first.setups());
                setups.add(setup(inputSd));
                FleetLog more = log.with(0, airframe.with(0, new JointLog(setups)));
                LeafPosterior logged = FleetModel.of(more, STANDARD).leaf(new Leaf.Logged(0, 0, 2));
                assertSameBits(joint.with(inputSd), logged);
                assertSameBits(joint.with(inputSd), model.leaf(new Leaf.NewSetup(0, 0, inputSd)));
            }
        }
    }

    private static void assertSameBits(LeafPosterior one, LeafPosterior other) {
        assertThat(one)
                .usingRecursiveComparison()
                .withEqualsForType(Arrays::equals, double[].class) // element by element it takes seconds
                .isEqualTo(other);
    }

    /** Against likelihood-weighted draws from the prior: no grid, no messages, no quadrature. */
    @Test
    void treeAgreesWithWeightedDrawsFromThePrior() {
        compare(fleet(), Thorough.count(300_000, 300_000, 1_000_000));
    }

    /** The same with two measured speeds, whose bias the fleet shares. */
    @Test
    void treeWithSpeedsAgreesWithWeightedDrawsFromThePrior() {
        assumeTrue(Thorough.on(), "needs a million draws: few of them fit the speeds");
        compare(fleetWithSpeeds(), 1_000_000);
    }

    /** ln v rises by 1 per unit of x − c, from 10 m/s at the threshold. */
    private static FleetLog fleetWithSpeeds() {
        SpeedCurve curve = new SpeedCurve(-1, 2, List.of(StrictMath.log(10) - 1, StrictMath.log(10) + 1));
        Trial slow = new Trial(0.2, Outcome.SEPARATED, new SpeedReading(StrictMath.log(11), curve));
        Trial fast = new Trial(0.1, Outcome.SEPARATED, new SpeedReading(StrictMath.log(15), curve));
        FleetLog log = fleet();
        AirframeLog first = log.airframes().get(0);
        JointLog joint = first.joints().get(0);
        AirframeLog slowed = first.with(0, joint.with(1, joint.setups().get(1).with(slow)));
        return new FleetLog(List.of(slowed, ReferenceCases.airframe(List.of(fast))));
    }

    @Test
    void firstMeasuredSpeedGivesTheSameBitsAsAFreshModel() {
        FleetLog log = fleet();
        AirframeLog measured = fleetWithSpeeds().airframes().get(1);
        double updated = FleetModel.of(log, STANDARD)
                .with(1, measured)
                .leaf(new Leaf.NewAirframe(0))
                .logRatioFor(0.99);
        assertThat(updated)
                .isEqualTo(FleetModel.of(log.with(1, measured), STANDARD)
                        .leaf(new Leaf.NewAirframe(0))
                        .logRatioFor(0.99));
    }

    private static void compare(FleetLog log, int draws) {
        WeightedDraws drawn = new WeightedDraws(STANDARD, log, new Random(20240611), draws);
        FleetModel model = FleetModel.of(log, STANDARD);
        check(model.leaf(new Leaf.Logged(0, 0, 0)), drawn.setup(0, 0, 0));
        check(model.leaf(new Leaf.Logged(0, 0, 1)), drawn.setup(0, 0, 1));
        check(model.leaf(new Leaf.Logged(0, 1, 0)), drawn.setup(0, 1, 0));
        check(model.leaf(new Leaf.Logged(1, 0, 0)), drawn.setup(1, 0, 0));
        check(model.leaf(new Leaf.NewSetup(0, 0, 0.1)), drawn.newSetup());
        check(model.leaf(new Leaf.NewJoint(0, 0.1)), drawn.newJoint());
        check(model.leaf(new Leaf.NewAirframe(0.1)), drawn.newAirframe());
        assertThat(model.logMarginalLikelihood()).isCloseTo(drawn.logMarginalLikelihood(), within(0.02));
    }

    private static void check(LeafPosterior leaf, WeightedDraws.Moments expected) {
        assertThat(leaf.correctionMean()).isCloseTo(expected.mean(), within(0.01));
        assertThat(leaf.correctionSd()).isCloseTo(expected.sd(), within(0.01));
    }

    @Test
    void orderOfTrialsChangesNoBit() {
        List<Trial> trials = new ArrayList<>();
        Random random = new Random(7);
        for (int i = 0; i < 20; i++) {
            trials.add(new Trial(random.nextGaussian() * 0.3, OUTCOMES.get(random.nextInt(3))));
        }
        double first = quantile(trials);
        Collections.shuffle(trials, random);
        assertThat(quantile(trials)).isEqualTo(first);
    }

    private static double quantile(List<Trial> trials) {
        FleetLog log = new FleetLog(
                List.of(ReferenceCases.airframe(trials), fleet().airframes().get(0)));
        return FleetModel.of(log, STANDARD).leaf(new Leaf.Logged(0, 0, 0)).logRatioFor(0.99);
    }

    @Test
    void orderOfAirframesChangesNoBit() {
        FleetLog log = fleet();
        FleetLog swapped =
                new FleetLog(List.of(log.airframes().get(1), log.airframes().get(0)));
        assertThat(FleetModel.of(swapped, STANDARD)
                        .leaf(new Leaf.NewAirframe(0))
                        .logRatioFor(0.99))
                .isEqualTo(FleetModel.of(log, STANDARD)
                        .leaf(new Leaf.NewAirframe(0))
                        .logRatioFor(0.99));
    }

    @Test
    void changedAirframeGivesTheSameBitsAsAFreshModel() {
        FleetLog log = fleet();
        AirframeLog changed = log.airframes().get(1).with(0, new JointLog(List.of(setup(0.05))));
        FleetModel updated = FleetModel.of(log, STANDARD).with(1, changed);
        FleetModel fresh = FleetModel.of(log.with(1, changed), STANDARD);
        assertThat(updated.leaf(new Leaf.Logged(0, 1, 0)).logRatioFor(0.99))
                .isEqualTo(fresh.leaf(new Leaf.Logged(0, 1, 0)).logRatioFor(0.99));
        assertThat(updated.logMarginalLikelihood()).isEqualTo(fresh.logMarginalLikelihood());
    }

    @Test
    void oneMoreTrialAtALeafIsTheWholeTreesAnswer() {
        FleetLog log = fleet();
        Trial trial = trial(1.25, Outcome.PARTIAL);
        AirframeLog airframe = log.airframes().get(1);
        SetupLog more = airframe.joints().get(0).setups().get(0).with(trial);
        FleetModel model = FleetModel.of(log, STANDARD);
        LeafPosterior quick = model.leaf(new Leaf.Logged(1, 0, 0)).after(trial);
        LeafPosterior whole = model.with(
                        1, airframe.with(0, airframe.joints().get(0).with(0, more)))
                .leaf(new Leaf.Logged(1, 0, 0));
        assertThat(quick.logRatioFor(0.99)).isCloseTo(whole.logRatioFor(0.99), within(1e-5));
        assertThat(quick.logMarginalLikelihood()).isCloseTo(whole.logMarginalLikelihood(), within(1e-5));
    }

    @Test
    void contradictoryTrialsByTheHundredNeitherUnderflowNorThrow() {
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            trials.add(new Trial(i % 2 == 0 ? 1.5 : -1.5, i % 2 == 0 ? Outcome.NONE : Outcome.SEPARATED));
        }
        FleetModel model = FleetModel.of(new FleetLog(List.of(ReferenceCases.airframe(trials))), STANDARD);
        assertThat(model.leaf(new Leaf.Logged(0, 0, 0)).logRatioFor(0.99)).isFinite();
        assertThat(model.logMarginalLikelihood()).isLessThan(-400);
    }

    @Test
    void chancesAddToOneAndFollowTheCharge() {
        LeafPosterior leaf = FleetModel.of(fleet(), STANDARD).leaf(new Leaf.Logged(0, 0, 0));
        double before = 0;
        for (double x = -1; x <= 1.5; x += 0.1) {
            assertThat(leaf.pNone(x) + leaf.pPartial(x) + leaf.pSeparated(x)).isCloseTo(1, within(1e-9));
            assertThat(leaf.pSeparated(x)).isGreaterThan(before);
            before = leaf.pSeparated(x);
        }
        assertThat(leaf.pSeparated(leaf.logRatioFor(0.99))).isCloseTo(0.99, within(1e-9));
    }

    /** At the median of the joint's own 99 % charge, its own chance of separating is as likely above 0.99 as below. */
    @Test
    void bandOfTheCurveIsThatOfTheJointsOwnCharge() {
        LeafPosterior leaf = FleetModel.of(fleet(), STANDARD).leaf(new Leaf.Logged(0, 0, 0));
        double x = leaf.ownLogRatioQuantile(0.5, 0.99);
        assertThat(leaf.separationQuantile(x, 0.5)).isCloseTo(0.99, within(1e-6));
        assertThat(leaf.separationQuantile(x, 0.05)).isLessThan(leaf.separationQuantile(x, 0.95));
    }

    @Test
    void theBandIsClosedWhereTheChargeIsSureToDoNothingOrSureToPart() {
        LeafPosterior leaf = FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(0.2));
        double lowBefore = 0;
        double highBefore = 0;
        for (double x = -6; x <= 6; x += 0.25) {
            double low = leaf.separationQuantile(x, 0.05);
            double high = leaf.separationQuantile(x, 0.95);
            assertThat(low).isBetween(lowBefore, high);
            assertThat(high).isBetween(highBefore, 1.0);
            lowBefore = low;
            highBefore = high;
        }
        assertThat(leaf.separationQuantile(-6, 0.95)).isZero();
        assertThat(leaf.separationQuantile(6, 0.05)).isEqualTo(1);
    }

    /** All tests so far separated: the likelihood of the mean is a shoulder, steep on one side and flat on the other. */
    @Test
    void aShoulderIsNotTakenForAPeak() {
        Trial[] separated = new Trial[20];
        java.util.Arrays.fill(separated, trial(1.0, Outcome.SEPARATED));
        FleetLog log = new FleetLog(List.of(new AirframeLog(List.of(new JointLog(List.of(setup(0.01, separated)))))));
        LeafPosterior standard = FleetModel.of(log, STANDARD).leaf(new Leaf.Logged(0, 0, 0));
        LeafPosterior fine = FleetModel.of(log, STANDARD, ReferenceCases.fine(STANDARD, 0.0125))
                .leaf(new Leaf.Logged(0, 0, 0));
        for (double p : new double[] {0.05, 0.5, 0.95}) {
            assertThat(standard.correctionQuantile(p)).isCloseTo(fine.correctionQuantile(p), within(0.01));
        }
        assertThat(standard.logRatioFor(0.99)).isCloseTo(fine.logRatioFor(0.99), within(0.01));
    }
}
