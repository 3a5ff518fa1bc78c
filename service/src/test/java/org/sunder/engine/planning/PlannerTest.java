package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sunder.Thorough;
import org.sunder.engine.learning.model.Outcome;

/** What every plan keeps to, whatever the joint and its log. */
class PlannerTest {

    /** Histories of each kind. */
    private static final int HISTORIES = Thorough.count(16, 48, 200);

    /** What the histories of one kind held, and what was said of them. */
    private record Met(
            int fire, int stop, int change, int voided, int elsewhere, int changed, int surprised, int damaged) {

        static Met of(List<PlanningCase> cases, List<NextStep> steps) {
            return new Met(
                    count(steps, NextStep.Fire.class::isInstance),
                    count(steps, NextStep.Stop.class::isInstance),
                    count(steps, NextStep.ChangeSetup.class::isInstance),
                    count(cases, on -> on.firings().stream().anyMatch(f -> !f.counted())),
                    count(cases, on -> on.firings().stream().anyMatch(f -> !f.currentSetup())),
                    count(cases, PlanningCase::setupChanged),
                    count(cases, PlanningCase::surpriseUnanswered),
                    count(cases, on -> on.firings().stream().anyMatch(Firing::damaged)));
        }

        private static <T> int count(List<T> all, Predicate<T> kind) {
            return (int) all.stream().filter(kind).count();
        }
    }

    @ParameterizedTest
    @EnumSource
    void planKeepsToEverySafeguard(Cases.Kind kind) {
        List<PlanningCase> cases = cases(kind);
        List<NextStep> steps = new ArrayList<>();
        for (PlanningCase on : cases) {
            NextStep step = Planner.nextCharge(on);
            steps.add(step);
            check(on, step);
            if (step instanceof NextStep.Fire fire) {
                for (NextStep.Consequence consequence : fire.then()) {
                    check(on.after(fire.steps(), consequence.outcome()), consequence.step());
                }
                inOrder(fire);
            }
        }
        Met met = Met.of(cases, steps);
        int most = HISTORIES * 3 / 4;
        int some = HISTORIES / 8;
        switch (kind) {
            case ANY -> {
                assertThat(met.fire()).isGreaterThanOrEqualTo(HISTORIES / 4);
                assertThat(met.damaged()).isGreaterThanOrEqualTo(some);
            }
            case CONFIRMED -> assertThat(met.stop()).isGreaterThanOrEqualTo(HISTORIES / 4);
            case VOIDED -> assertThat(met.voided()).isEqualTo(HISTORIES);
            case OTHER_SETUP -> assertThat(met.elsewhere()).isEqualTo(HISTORIES);
            case CHANGED -> assertThat(met.changed()).isEqualTo(HISTORIES);
            case SURPRISED -> assertThat(met.surprised()).isGreaterThanOrEqualTo(most);
            case LOW_CEILING -> assertThat(met.change()).isGreaterThanOrEqualTo(HISTORIES / 4);
        }
        if (kind != Cases.Kind.LOW_CEILING && kind != Cases.Kind.CONFIRMED) {
            assertThat(met.fire()).isGreaterThanOrEqualTo(some);
        }
    }

    /** Films weigh in the choice of a charge and in nothing else: all that is held of a plan is held of one that counts on them. */
    @ParameterizedTest
    @EnumSource
    void aPlanThatCountsOnFilmsKeepsToEverySafeguard(Cases.Kind kind) {
        int seed = 0;
        int other = 0;
        for (PlanningCase unfilmed : cases(kind)) {
            double sd = new double[] {0.03, 0.05, 0.10, 0.50}[seed++ % 4];
            PlanningCase on = unfilmed.filmed(MeasuredSpeeds.filming(sd));
            NextStep step = Planner.nextCharge(on);
            NextStep without = Planner.ladder(unfilmed, 0);
            check(on, step);
            assertThat(step.getClass()).isEqualTo(without.getClass());
            assertThat(Planner.ladder(on.filmed(null), 0)).isEqualTo(without);
            if (step instanceof NextStep.Stop stop) {
                assertThat(stop.flightCharge()).isEqualTo(((NextStep.Stop) without).flightCharge());
            }
            if (step instanceof NextStep.Fire fire) {
                inOrder(fire);
                for (NextStep.Consequence consequence : fire.then()) {
                    check(on.after(fire.steps(), consequence.outcome()), consequence.step());
                }
                other += fire.steps() == ((NextStep.Fire) without).steps() ? 0 : 1;
            }
        }
        if (kind == Cases.Kind.ANY) {
            assertThat(other).as("charges that are chosen otherwise").isPositive();
        }
    }

    private static List<PlanningCase> cases(Cases.Kind kind) {
        return IntStream.range(0, HISTORIES)
                .mapToObj(seed -> Cases.random(kind, new Random(seed)))
                .toList();
    }

    /** From one firing: after none at least what follows partial, and that at least what follows separated. */
    private static void inOrder(NextStep.Fire fire) {
        assertThat(fire.then())
                .extracting(NextStep.Consequence::outcome)
                .containsExactly(Outcome.NONE, Outcome.PARTIAL, Outcome.SEPARATED);
        double[] charges = fire.then().stream()
                .mapToDouble(consequence -> consequence.step() instanceof NextStep.Fire next
                        ? next.charge()
                        : consequence.step() instanceof NextStep.Stop ? 0 : Double.POSITIVE_INFINITY)
                .toArray();
        assertThat(charges[0] == 0 || charges[0] >= charges[1])
                .as("after none %s, after partial %s", charges[0], charges[1])
                .isTrue();
        assertThat(charges[1] == 0 || charges[1] >= charges[2])
                .as("after partial %s, after separated %s", charges[1], charges[2])
                .isTrue();
    }

    /** Never less after none or partial; never more after separated but to confirm; the same after a surprise. */
    private static void plain(PlanningCase on, NextStep.Fire fire) {
        List<Firing> counted = on.firings().stream().filter(Firing::counted).toList();
        if (counted.isEmpty() || !counted.get(counted.size() - 1).currentSetup()) {
            return;
        }
        Firing last = counted.get(counted.size() - 1);
        double step = on.measureStep() * (1 + 1e-6);
        if (last.outcome() == Outcome.SEPARATED) {
            assertThat(fire.charge() <= last.charge() * (1 + 1e-6)
                            || fire.reason().code() == Reason.Code.CONFIRM)
                    .as("%s after %s separated: %s", fire.charge(), last.charge(), fire.reason())
                    .isTrue();
        } else if (!last.damaged()) {
            assertThat(fire.charge()).isGreaterThanOrEqualTo(last.charge() * (1 - 1e-6));
        }
        if (on.surpriseUnanswered() && fire.reason().code() == Reason.Code.SAME_AFTER_SURPRISE) {
            assertThat(fire.charge()).isCloseTo(last.charge(), within(step));
        }
    }

    /** The safeguards restated in kilograms, apart from the code that applies them. */
    private static void check(PlanningCase on, NextStep step) {
        if (step instanceof NextStep.Fire fire) {
            bounded(on, fire.charge());
            plain(on, fire);
            double highest = highestUndamaged(on);
            assertThat(on.firings())
                    .as("what did nothing is not fired again unless as little parted it")
                    .noneMatch(firing -> didNothing(on, firing) && fire.charge() <= firing.charge());
            if (highest > 0) {
                assertThat(fire.charge()).isLessThanOrEqualTo(1.25 * highest * (1 + 1e-6));
            } else {
                assertThat(fire.probabilities().separated()).isLessThanOrEqualTo(0.60);
            }
        } else if (step instanceof NextStep.Stop stop) {
            flown(on, stop.flightCharge());
        } else if (step instanceof NextStep.ChangeSetup change) {
            assertThat(change.highestCharge()).isLessThanOrEqualTo(on.ceiling() * (1 + 1e-6));
        }
    }

    private static void flown(PlanningCase on, FlightCharge flight) {
        bounded(on, flight.charge());
        bounded(on, flight.backup().charge());
        assertThat(flight.charge()).isLessThanOrEqualTo(1.25 * highestUndamaged(on) * (1 + 1e-6));
        assertThat(flight.modelChance()).isGreaterThanOrEqualTo(0.99);
        assertThat(on.firings())
                .anyMatch(f -> f.outcome() == Outcome.SEPARATED && !f.damaged() && f.counted() && f.currentSetup());
    }

    private static void bounded(PlanningCase on, double charge) {
        assertThat(charge).isPositive().isLessThanOrEqualTo(on.ceiling() * (1 + 1e-6));
        assertThat(charge / on.measureStep()).isCloseTo(Math.rint(charge / on.measureStep()), within(1e-6));
        for (Firing firing : on.firings()) {
            if (firing.damaged()) {
                double samePressure = on.handbookCharge() * firing.gaugePressure() / on.handbookPressure();
                assertThat(charge).isLessThan(firing.currentSetup() ? firing.charge() : samePressure);
            }
        }
    }

    /** In kilograms of the present setup: firings of another one count by their ratio, void ones not at all. */
    private static double highestUndamaged(PlanningCase on) {
        return on.firings().stream()
                .filter(firing -> firing.counted() && !firing.damaged())
                .mapToDouble(firing -> on.handbookCharge() * Math.exp(firing.logRatio()))
                .max()
                .orElse(0);
    }

    private static boolean didNothing(PlanningCase on, Firing none) {
        List<Firing> counted = on.firings().stream().filter(Firing::counted).toList();
        boolean doubted =
                on.surpriseUnanswered() && counted.get(counted.size() - 1).equals(none);
        return none.counted()
                && !doubted
                && none.currentSetup()
                && none.outcome() == Outcome.NONE
                && on.firings().stream()
                        .filter(firing -> firing.counted() && firing.currentSetup())
                        .filter(firing -> firing.outcome() != Outcome.NONE)
                        .allMatch(firing -> firing.charge() > none.charge() * (1 + 1e-6));
    }

    @ParameterizedTest
    @EnumSource
    void noFlightChargeBeforeASeparatedTestOfThePresentSetup(Cases.Kind kind) {
        int none = 0;
        int flown = 0;
        for (PlanningCase on : cases(kind)) {
            FlightAdvice advice = FlightAdvice.of(on);
            boolean separated = on.firings().stream()
                    .anyMatch(f -> f.outcome() == Outcome.SEPARATED && f.counted() && f.currentSetup());
            if (!separated) {
                none++;
                assertThat(advice).isInstanceOf(NoFlightCharge.class);
            } else if (advice instanceof FlightCharge flight) {
                flown++;
                flown(on, flight);
            }
        }
        if (kind == Cases.Kind.CHANGED) {
            assertThat(none).isEqualTo(HISTORIES);
        }
        if (kind == Cases.Kind.CONFIRMED) {
            assertThat(flown).isGreaterThanOrEqualTo(HISTORIES / 4);
        }
    }

    @Test
    void aSurpriseIsAnsweredByTheSameAgain() {
        int met = 0;
        for (PlanningCase on : cases(Cases.Kind.SURPRISED)) {
            if (on.surpriseUnanswered() && Planner.nextCharge(on) instanceof NextStep.Fire fire) {
                Firing last = on.firings().get(on.firings().size() - 1);
                assertThat(fire.charge()).isCloseTo(last.charge(), within(1e-12));
                assertThat(fire.reason().code()).isEqualTo(Reason.Code.SAME_AFTER_SURPRISE);
                met++;
            }
        }
        assertThat(met).isGreaterThanOrEqualTo(HISTORIES / 2);
    }

    @Test
    void whatFollowsAFiringIsTheSameFromTheLogAsFromThePlan() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            PlanningCase on = Cases.random(Cases.Kind.ANY, new Random(seed));
            if (Planner.nextCharge(on) instanceof NextStep.Fire fire) {
                for (NextStep.Consequence consequence : fire.then()) {
                    NextStep anew = Planner.ladder(on.after(fire.steps(), consequence.outcome()), 0);
                    assertThat(PlainPlan.steps(anew)).isEqualTo(PlainPlan.steps(consequence.step()));
                }
            }
        }
    }

    @Test
    void onlyTheGuardInTheWayAsksForALimitAndAStatedLimitForAnotherSetup() {
        PlanningCase stated = Cases.of(0.8 * Cases.HANDBOOK, 0.00005, List.of());
        PlanningCase guarded = new PlanningCase(
                stated.posterior(),
                stated.handbookCharge(),
                stated.handbookPressure(),
                stated.ceiling(),
                stated.measureStep(),
                stated.firings(),
                false,
                false,
                stated.goal(),
                false);
        assertThat(Planner.nextCharge(stated)).isInstanceOf(NextStep.ChangeSetup.class);
        assertThat(Planner.nextCharge(guarded)).isInstanceOfSatisfying(NextStep.StateLimit.class, limit -> {
            assertThat(limit.defaultCeiling()).isEqualTo(stated.ceiling());
            double needed = Cases.HANDBOOK * Math.exp(stated.posterior().logRatioFor(0.99));
            assertThat(limit.neededCharge()).isCloseTo(needed, within(1e-12));
        });
    }

    @Test
    void sameCaseGivesTheSameStep() {
        assertThat(Planner.nextCharge(Cases.random(new Random(3))))
                .isEqualTo(Planner.nextCharge(Cases.random(new Random(3))));
    }

    @Test
    void untestedJointIsFiredFirstAtAModestCharge() {
        PlanningCase on = Cases.of();
        assertThat(Planner.nextCharge(on)).isInstanceOfSatisfying(NextStep.Fire.class, fire -> {
            assertThat(fire.probabilities().separated()).isBetween(0.2, 0.6);
            assertThat(fire.then()).hasSize(3);
        });
        assertThat(EvidenceReport.of(on).evidence()).isEqualTo(Evidence.NONE);
    }

    @Test
    void separatedTestsInARowAreSufficient() {
        Firing firing = Cases.firing(1.4, Outcome.SEPARATED, false);
        PlanningCase on = Cases.of(
                Cases.firing(0.9, Outcome.NONE, false),
                Cases.firing(1.1, Outcome.PARTIAL, false),
                Cases.firing(1.3, Outcome.SEPARATED, false),
                firing,
                firing);
        assertThat(EvidenceReport.of(on).evidence()).isEqualTo(Evidence.SUFFICIENT);
        assertThat(Planner.nextCharge(on)).isInstanceOfSatisfying(NextStep.Stop.class, stop -> {
            assertThat(stop.flightCharge().testsAlone().separated()).isEqualTo(3);
            assertThat(stop.flightCharge().backup().charge())
                    .isGreaterThanOrEqualTo(1.25 * stop.flightCharge().charge() * (1 - 1e-9));
        });
    }

    @Test
    void lowCeilingAsksForAnotherSetup() {
        PlanningCase on = Cases.of(0.8 * Cases.HANDBOOK, 0.00005, List.of());
        assertThat(Planner.nextCharge(on)).isInstanceOfSatisfying(NextStep.ChangeSetup.class, change -> {
            assertThat(change.highestCharge()).isCloseTo(0.0008, within(1e-12));
            assertThat(change.requiredScale()).isLessThan(0.7);
        });
    }

    @Test
    void surpriseMakesTheEvidenceConflictUntilATestThatFits() {
        PlanningCase calm = Cases.of(
                Cases.firing(1.3, Outcome.SEPARATED, false),
                Cases.firing(1.3, Outcome.SEPARATED, false),
                Cases.firing(1.3, Outcome.SEPARATED, false));
        PlanningCase odd = calm.after(30, Outcome.NONE);
        assertThat(EvidenceReport.of(odd).evidence()).isEqualTo(Evidence.CONFLICTING);
        assertThat(Planner.nextCharge(odd)).isNotInstanceOf(NextStep.Stop.class);
        assertThat(EvidenceReport.of(odd.after(30, Outcome.SEPARATED)).evidence())
                .isNotEqualTo(Evidence.CONFLICTING);
    }

    @Test
    void changedSetupWithMuchUncertaintyIsStale() {
        PlanningCase on = Cases.of(Cases.firing(1.3, Outcome.SEPARATED, false));
        PlanningCase changed = new PlanningCase(
                Cases.UNTESTED,
                on.handbookCharge(),
                on.handbookPressure(),
                on.ceiling(),
                on.measureStep(),
                on.firings(),
                false,
                true,
                on.goal());
        assertThat(EvidenceReport.of(changed).evidence()).isEqualTo(Evidence.STALE);
    }

    @Test
    void damageBoundsTheChargeOfTheSamePressureInAnotherSetup() {
        Firing damaging = new Firing(0.002, 0.2, 150_000, Outcome.SEPARATED, true, true, false);
        PlanningCase on = Cases.of(damaging);
        assertThat(Safeguards.checkTest(on, 30).map(Rejection::safeguard)).isEqualTo(Optional.of("damage"));
        assertThat(Safeguards.checkLimits(on, 29)).isEmpty();
    }

    @Test
    void chargeKnownToDoNothingIsNotFiredAgain() {
        PlanningCase on = Cases.of(Cases.firing(1.0, Outcome.NONE, false));
        assertThat(Safeguards.checkTest(on, 20).map(Rejection::safeguard))
                .isEqualTo(Optional.of("known-to-do-nothing"));
        assertThat(Safeguards.checkTest(on, 21)).isEmpty();
        assertThat(Safeguards.checkTest(on, 26).map(Rejection::safeguard)).isEqualTo(Optional.of("step"));
    }

    @Test
    void backupNeverExceedsTheCeilingAndSaysSo() {
        Firing firing = Cases.firing(1.4, Outcome.SEPARATED, false);
        PlanningCase on = Cases.of(0.0016, 0.00005, List.of(firing, firing, firing, firing));
        assertThat(FlightAdvice.of(on)).isInstanceOfSatisfying(FlightCharge.class, flight -> {
            assertThat(flight.backup().bound()).isTrue();
            assertThat(flight.backup().charge()).isCloseTo(0.0016, within(1e-12));
        });
    }
}
