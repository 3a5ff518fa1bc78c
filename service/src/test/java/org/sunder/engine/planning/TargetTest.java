package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.Outcome;

/** The charge to fly: the smallest that will do, or one a little above it that was seen to separate. */
class TargetTest {

    private static final double LIMIT = StrictMath.log(1.20);

    /** A joint well known from tests in a former setup. */
    private static PlanningCase changed() {
        List<Firing> fired = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            fired.add(Cases.firing(0.9, Outcome.NONE, false));
            fired.add(Cases.firing(1.1, Outcome.PARTIAL, false));
            fired.add(Cases.firing(1.2, Outcome.SEPARATED, false));
        }
        PlanningCase on = Cases.of(3 * Cases.HANDBOOK, 0.00001, fired);
        List<Firing> former = fired.stream()
                .map(f -> new Firing(f.charge(), f.logRatio(), f.gaugePressure(), f.outcome(), false, true, false))
                .toList();
        return with(on, former);
    }

    private static PlanningCase with(PlanningCase on, List<Firing> firings) {
        return new PlanningCase(
                on.posterior(),
                on.handbookCharge(),
                on.handbookPressure(),
                on.ceiling(),
                on.measureStep(),
                firings,
                false,
                true,
                on.goal());
    }

    /** One separation in the new setup on top. */
    private static PlanningCase separatedAt(double ratio, boolean damaged) {
        PlanningCase before = changed();
        List<Firing> firings = new ArrayList<>(before.firings());
        firings.add(Cases.firing(ratio, Outcome.SEPARATED, damaged));
        PlanningCase after = before.after(before.stepsAtLeast(ratio * Cases.HANDBOOK), Outcome.SEPARATED);
        return with(after, firings);
    }

    @Test
    void aChargeSeenToSeparateIsFlownRatherThanASmallerOneTestedAgain() {
        PlanningCase on = separatedAt(1.45, false);
        assertThat(StrictMath.log(1.45))
                .as("above the smallest that will do, and little above the joint's own")
                .isGreaterThan(on.posterior().logRatioFor(0.99) + 0.02)
                .isLessThan(on.posterior().ownLogRatioQuantile(0.5, 0.99) + LIMIT);
        assertThat(Planner.nextCharge(on)).isInstanceOfSatisfying(NextStep.Stop.class, stop -> {
            assertThat(stop.flightCharge().charge()).isCloseTo(1.45 * Cases.HANDBOOK, within(1e-9));
            assertThat(stop.flightCharge().modelChance()).isGreaterThan(0.99);
        });
    }

    @Test
    void aChargeFarAboveWhatTheJointNeedsIsNotFlownForThat() {
        PlanningCase on = separatedAt(1.75, false);
        assertThat(StrictMath.log(1.75)).isGreaterThan(on.posterior().ownLogRatioQuantile(0.5, 0.99) + LIMIT);
        assertThat(on.charge(Target.of(on).steps())).isLessThan(1.70 * Cases.HANDBOOK);
        assertThat(Planner.nextCharge(on)).isInstanceOf(NextStep.Fire.class);
    }

    @Test
    void aSeparationThatDidDamageIsNotFlown() {
        PlanningCase on = separatedAt(1.45, true);
        assertThat(Target.lowestSeparated(on)).isEmpty();
        assertThat(on.charge(Target.of(on).steps())).isLessThan(1.45 * Cases.HANDBOOK);
        assertThat(Planner.nextCharge(on)).isNotInstanceOf(NextStep.Stop.class);
    }

    @Test
    void aSeparationOfAFormerSetupEndsNoTesting() {
        PlanningCase on = changed();
        assertThat(Planner.nextCharge(on)).isInstanceOf(NextStep.Fire.class);
        assertThat(Planner.compared(on))
                .isNotEmpty()
                .allSatisfy(worth -> assertThat(worth.finished())
                        .as("only a separation in the new setup ends the tests")
                        .isLessThanOrEqualTo(worth.separated() + 1e-12));
    }

    @Test
    void nothingButTheSmallestIsFlownWhereThatIsTested() {
        PlanningCase on = separatedAt(1.30, false);
        Target target = Target.of(on);
        assertThat(on.charge(target.steps())).isGreaterThan(1.30 * Cases.HANDBOOK);
        assertThat(on.posterior().pSeparated(on.logRatio(target.steps() - 1))).isLessThan(0.99);
    }
}
