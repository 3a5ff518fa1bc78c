package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.sunder.engine.planning.Cases.HANDBOOK;
import static org.sunder.engine.planning.Cases.PRESSURE;
import static org.sunder.engine.planning.Cases.firing;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.OneStepLookahead;

/**
 * Each safeguard by itself, on either side of its bound: a plan that keeps well away from a bound would not notice that it is
 * gone. Steps are of 0.05 g, the handbook charge is 1 g: 20 steps.
 */
class SafeguardsTest {

    private static final double STEP = 0.00005;

    /** As a firing at a ratio, with what else a log may say of it. */
    private static Firing told(double ratio, Outcome outcome, boolean damaged, boolean counted, boolean currentSetup) {
        return new Firing(
                HANDBOOK * ratio, StrictMath.log(ratio), PRESSURE * ratio, outcome, damaged, counted, currentSetup);
    }

    private static Firing damaging(double kilograms, double pressure, boolean currentSetup) {
        return new Firing(
                kilograms, StrictMath.log(kilograms / HANDBOOK), pressure, Outcome.SEPARATED, true, true, currentSetup);
    }

    private static PlanningCase surprised(Firing... firings) {
        PlanningCase calm = Cases.of(firings);
        return new PlanningCase(
                calm.posterior(), HANDBOOK, PRESSURE, calm.ceiling(), STEP, List.of(firings), true, false, calm.goal());
    }

    private static Optional<String> test(PlanningCase on, int steps) {
        return Safeguards.checkTest(on, steps).map(Rejection::safeguard);
    }

    private static Optional<String> limits(PlanningCase on, int steps) {
        return Safeguards.checkLimits(on, steps).map(Rejection::safeguard);
    }

    @Test
    void theCeilingItselfMayBeFiredAndNoStepMore() {
        PlanningCase on = Cases.of(0.0015, STEP, List.of());
        assertThat(limits(on, 30)).isEmpty();
        assertThat(Safeguards.checkLimits(on, 31)).hasValueSatisfying(no -> {
            assertThat(no.safeguard()).isEqualTo("ceiling");
            assertThat(no.reason()).contains("1.50 g");
        });
        assertThat(Safeguards.bound(on)).isEqualTo(0.0015);
    }

    @Test
    void whatDidDamageIsNotReachedAgain() {
        PlanningCase on = Cases.of(firing(1.5, Outcome.SEPARATED, true));
        assertThat(limits(on, 29)).isEmpty();
        assertThat(limits(on, 30)).hasValue("damage");
        assertThat(Safeguards.checkFlight(on, 30).map(Rejection::safeguard)).hasValue("damage");
        assertThat(limits(Cases.of(told(1.5, Outcome.NONE, true, false, true)), 30))
                .as("a void firing that did damage bounds too")
                .hasValue("damage");
    }

    /** In the setup in force the smaller of charge and pressure bounds, in another one the pressure alone. */
    @Test
    void damageBoundsByTheChargeOfTheSetupAndByThePressure() {
        assertThat(limits(Cases.of(damaging(0.0014, 150_000, true)), 27)).isEmpty();
        assertThat(limits(Cases.of(damaging(0.0014, 150_000, true)), 28)).hasValue("damage");
        assertThat(limits(Cases.of(damaging(0.0016, 150_000, true)), 29)).isEmpty();
        assertThat(limits(Cases.of(damaging(0.0016, 150_000, true)), 30)).hasValue("damage");
        assertThat(limits(Cases.of(damaging(0.0012, 150_000, false)), 29)).isEmpty();
        assertThat(limits(Cases.of(damaging(0.0012, 150_000, false)), 30)).hasValue("damage");
    }

    @Test
    void fiftyGramsAreTheMostWhateverTheCeiling() {
        PlanningCase on = Cases.of(0.1, 0.001, List.of());
        assertThat(limits(on, 50)).isEmpty();
        assertThat(limits(on, 51)).hasValue("domain");
        assertThat(Safeguards.checkFlight(on, 51).map(Rejection::safeguard)).hasValue("domain");
    }

    @Test
    void aFirstChargeHasAtMostSixtyPercent() {
        for (PlanningCase on : List.of(
                Cases.of(),
                Cases.of(told(1.9, Outcome.NONE, false, false, true)),
                Cases.of(firing(2.4, Outcome.SEPARATED, true)))) {
            int most = on.stepsAtMost(HANDBOOK * StrictMath.exp(on.posterior().logRatioFor(0.60)));
            assertThat(on.posterior().pSeparated(on.logRatio(most))).isLessThanOrEqualTo(0.60);
            assertThat(test(on, most)).isEmpty();
            assertThat(test(on, most + 1)).hasValue("first-charge");
        }
        assertThat(test(Cases.of(firing(1.6, Outcome.PARTIAL, false)), 40))
                .as("no first charge any more")
                .isEmpty();
    }

    @Test
    void aStepIsAtMostAQuarterAboveTheHighestRatioThatDidNoDamage() {
        PlanningCase own = Cases.of(firing(0.8, Outcome.NONE, false));
        assertThat(test(own, 20)).isEmpty();
        assertThat(test(own, 21)).hasValue("step");
        assertThat(Safeguards.checkFlight(own, 20)).isEmpty();
        assertThat(Safeguards.checkFlight(own, 21).map(Rejection::safeguard)).hasValue("step");
        PlanningCase another = Cases.of(told(0.8, Outcome.NONE, false, true, false));
        assertThat(test(another, 20)).isEmpty();
        assertThat(test(another, 21)).hasValue("step");
        PlanningCase damaged = Cases.of(firing(0.8, Outcome.NONE, false), firing(1.4, Outcome.SEPARATED, true));
        assertThat(test(damaged, 21)).as("damage opens no step").hasValue("step");
        PlanningCase voided =
                Cases.of(firing(0.8, Outcome.NONE, false), told(1.4, Outcome.SEPARATED, false, false, true));
        assertThat(test(voided, 21)).as("what is void opens no step").hasValue("step");
    }

    @Test
    void whatDidNothingIsKnownToUntilAsLittleParted() {
        Firing none = firing(1.0, Outcome.NONE, false);
        Firing separated = firing(1.3, Outcome.SEPARATED, false);
        assertThat(test(Cases.of(none, separated), 20)).hasValue("known-to-do-nothing");
        assertThat(test(Cases.of(none, separated), 21)).isEmpty();
        assertThat(test(Cases.of(none, firing(0.9, Outcome.PARTIAL, false)), 19))
                .as("less has moved it")
                .isEmpty();
        assertThat(test(Cases.of(none, firing(1.0, Outcome.PARTIAL, false)), 20))
                .as("as little has moved it")
                .isEmpty();
        assertThat(test(Cases.of(told(1.0, Outcome.NONE, false, false, true), separated), 20))
                .as("void")
                .isEmpty();
        assertThat(test(Cases.of(told(1.0, Outcome.NONE, false, true, false), separated), 20))
                .as("in another setup")
                .isEmpty();
    }

    @Test
    void aSurpriseThatNothingAnsweredIsNotKnown() {
        Firing separated = firing(1.3, Outcome.SEPARATED, false);
        Firing odd = firing(1.2, Outcome.NONE, false);
        assertThat(test(surprised(separated, odd), 24)).isEmpty();
        assertThat(test(Cases.of(separated, odd), 24)).hasValue("known-to-do-nothing");
        assertThat(test(surprised(odd, separated), 24))
                .as("the surprise is the last firing, not an earlier one")
                .hasValue("known-to-do-nothing");
    }

    @Test
    void afterNoneOrPartialNeverLess() {
        PlanningCase partial = Cases.of(firing(0.9, Outcome.NONE, false), firing(1.1, Outcome.PARTIAL, false));
        assertThat(Safeguards.checkTest(partial, 21)).hasValueSatisfying(no -> {
            assertThat(no.safeguard()).startsWith("never-less-after-");
            assertThat(no.reason()).contains("1.10 g");
        });
        assertThat(test(partial, 22)).isEmpty();
        assertThat(Safeguards.checkFlight(partial, 21)).as("a rule of tests").isEmpty();
        PlanningCase separated = Cases.of(firing(0.9, Outcome.NONE, false), firing(1.1, Outcome.SEPARATED, false));
        assertThat(test(separated, 21)).isEmpty();
        PlanningCase damaged = Cases.of(firing(0.9, Outcome.NONE, false), firing(1.1, Outcome.PARTIAL, true));
        assertThat(test(damaged, 21)).as("what did damage must be undercut").isEmpty();
    }

    @Test
    void afterSeparatedNeverMoreUnlessItIsTheSettledCharge() {
        PlanningCase once = Cases.of(firing(0.9, Outcome.NONE, false), firing(1.1, Outcome.SEPARATED, false));
        Target target = Target.of(once, new OneStepLookahead(once.posterior(), 0.99));
        assertThat(target.settled(once)).isFalse();
        assertThat(PlainPlan.neverMore(once, target, 22)).isEmpty();
        assertThat(PlainPlan.neverMore(once, target, 23))
                .hasValueSatisfying(no -> assertThat(no.reason()).contains("1.10 g"));
        assertThat(PlainPlan.neverMore(once, target, target.steps())).isPresent();
        PlanningCase partial = Cases.of(firing(0.9, Outcome.NONE, false), firing(1.1, Outcome.PARTIAL, false));
        assertThat(PlainPlan.neverMore(partial, target, 40)).isEmpty();
    }

    @Test
    void afterASurpriseTheSameAgainOnTheGridToTheSafeSide() {
        Firing before = firing(1.3, Outcome.SEPARATED, false);
        assertThat(PlainPlan.sameAgain(surprised(before, firing(1.02, Outcome.NONE, false))))
                .hasValue(21);
        assertThat(PlainPlan.sameAgain(surprised(before, firing(1.02, Outcome.SEPARATED, false))))
                .hasValue(20);
        assertThat(PlainPlan.sameAgain(surprised(before, firing(0.01, Outcome.SEPARATED, false))))
                .as("a charge is one step at least")
                .hasValue(1);
        assertThat(PlainPlan.sameAgain(surprised(before, firing(1.02, Outcome.NONE, true))))
                .as("never what did damage")
                .isEmpty();
        assertThat(PlainPlan.sameAgain(Cases.of(before, firing(1.02, Outcome.NONE, false))))
                .isEmpty();
    }

    @Test
    void theOrderOfOutcomesAsksForNothingAfterSeparatedOrDamage() {
        Firing none = firing(0.9, Outcome.NONE, false);
        assertThat(PlainPlan.leastInOrder(Cases.of())).isZero();
        assertThat(PlainPlan.leastInOrder(Cases.of(none, firing(1.1, Outcome.SEPARATED, false))))
                .isZero();
        assertThat(PlainPlan.leastInOrder(Cases.of(none, firing(1.1, Outcome.PARTIAL, true))))
                .isZero();
        PlanningCase partial = Cases.of(none, firing(1.1, Outcome.PARTIAL, false));
        int least = PlainPlan.leastInOrder(partial);
        assertThat(least)
                .isEqualTo(PlainPlan.steps(Planner.plan(partial.lastInstead(Outcome.SEPARATED), 0, 0)))
                .isPositive();
        PlanningCase nothing = Cases.of(none, firing(1.1, Outcome.NONE, false));
        assertThat(PlainPlan.leastInOrder(nothing))
                .isEqualTo(PlainPlan.steps(Planner.plan(nothing.lastInstead(Outcome.PARTIAL), least, 0)))
                .isGreaterThanOrEqualTo(least);
    }

    @Test
    void onlyASeparatedTestOnTheGroundInThisSetupConfirms() {
        assertThat(firing(1.2, Outcome.SEPARATED, false).confirms()).isTrue();
        assertThat(firing(1.2, Outcome.PARTIAL, false).confirms()).isFalse();
        assertThat(firing(1.2, Outcome.SEPARATED, true).confirms()).isFalse();
        assertThat(told(1.2, Outcome.SEPARATED, false, false, true).confirms()).isFalse();
        assertThat(told(1.2, Outcome.SEPARATED, false, true, false).confirms()).isFalse();
        assertThat(new Firing(HANDBOOK, 0, PRESSURE, Outcome.SEPARATED, false, true, true, false).confirms())
                .as("a flight")
                .isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1", "-1, 0, 1", "1, 0, 0", "1, NaN, 1", "1, Infinity, 1", "Infinity, 0, 1", "NaN, 0, 1"})
    void whatIsNoFiringIsRefused(double charge, double logRatio, double pressure) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Firing(charge, logRatio, pressure, Outcome.NONE, false, true, true));
    }

    @ParameterizedTest
    @CsvSource({"-1, 3, 0.95", "4, 3, 0.95", "2, 3, 0", "2, 3, 1", "2, 3, NaN"})
    void limitsOfWhatWasNeverCountedAreRefused(int separated, int counted, double confidence) {
        assertThatIllegalArgumentException().isThrownBy(() -> TestsAlone.of(separated, counted, confidence));
    }

    @Test
    void testsAloneAreThoseThatCountAtTheChargeOrBelow() {
        PlanningCase on = Cases.of(
                firing(1.0, Outcome.NONE, false),
                told(1.1, Outcome.SEPARATED, false, false, true),
                firing(1.2, Outcome.SEPARATED, false),
                firing(1.4, Outcome.SEPARATED, false));
        assertThat(TestsAlone.upTo(StrictMath.log(1.2), on)).isEqualTo(TestsAlone.of(1, 2, TestsAlone.CONFIDENCE));
        assertThat(TestsAlone.upTo(StrictMath.log(1.4), on)).isEqualTo(TestsAlone.of(2, 3, TestsAlone.CONFIDENCE));
        assertThat(TestsAlone.upTo(StrictMath.log(0.9), on)).isEqualTo(TestsAlone.of(0, 0, TestsAlone.CONFIDENCE));
    }
}
