package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.LeafPosterior;

/**
 * The planner's whole plan from one start, grown where simulated joints lead it; joints that share outcomes share its
 * work. Ceiling three times the handbook charge.
 */
final class PlanTree {

    static final int MOST_TESTS = 20;
    private static final double CEILING = 3;

    private final PlanningCase on;
    /** Whether the order of outcomes is asked for. */
    private final boolean ordered;

    private final Map<Outcome, PlanTree> children = new EnumMap<>(Outcome.class);
    private NextStep step;

    private PlanTree(PlanningCase on, boolean ordered) {
        this.on = on;
        this.ordered = ordered;
    }

    static PlanTree start(
            LeafPosterior posterior, double handbookCharge, double measure, List<Firing> before, Goal goal) {
        boolean changed = !before.isEmpty();
        return new PlanTree(
                new PlanningCase(
                        posterior,
                        handbookCharge,
                        1e5,
                        CEILING * handbookCharge,
                        measure,
                        before,
                        false,
                        changed,
                        goal),
                true);
    }

    /** The same start, planned with no regard to the order of outcomes. */
    PlanTree unordered() {
        return new PlanTree(on, false);
    }

    /** What is known and asked for at the start. */
    PlanningCase on() {
        return on;
    }

    private NextStep step() {
        if (step == null) {
            step = ordered ? Planner.ladder(on, 0) : Planner.plan(on, 0, 0);
        }
        return step;
    }

    /**
     * What came of a joint's tests.
     *
     * @param charge charge to fly, kg; NaN if the setup has to change
     * @param backup second charge to fly, kg
     * @param violations charges fired or flown above the ceiling or the largest step
     */
    record Result(List<Trial> trials, double charge, double backup, double highest, int violations) {

        static Result of(List<Trial> trials, NextStep last, double ceiling, double highest, int violations) {
            if (!(last instanceof NextStep.Stop stop)) {
                return new Result(trials, Double.NaN, Double.NaN, highest, violations);
            }
            double charge = stop.flightCharge().charge();
            double backup = stop.flightCharge().backup().charge();
            boolean wrong = Math.max(charge, backup) > ceiling * (1 + 1e-9) || charge > 1.25 * highest * (1 + 1e-9);
            return new Result(trials, charge, backup, highest, violations + (wrong ? 1 : 0));
        }

        int tests() {
            return trials.size();
        }
    }

    Result run(TrueJoint joint, Random random) {
        List<Trial> trials = new ArrayList<>();
        double ceiling = CEILING * joint.handbookCharge();
        double highest = on.counted().stream().mapToDouble(Firing::charge).max().orElse(0);
        int violations = 0;
        PlanTree at = this;
        while (at.step() instanceof NextStep.Fire fire && trials.size() < MOST_TESTS) {
            violations += violations(fire, ceiling, highest);
            highest = Math.max(highest, fire.charge());
            Outcome outcome = joint.fire(fire.charge(), random);
            trials.add(new Trial(at.on.logRatio(fire.steps()), outcome));
            PlanningCase from = at.on;
            at = at.children.computeIfAbsent(outcome, o -> new PlanTree(from.after(fire.steps(), o), ordered));
        }
        return Result.of(trials, at.step(), ceiling, highest, violations);
    }

    /** 1 where a charge to fire lies above the ceiling or the largest step. */
    static int violations(NextStep.Fire fire, double ceiling, double highest) {
        boolean wrong =
                fire.charge() > ceiling * (1 + 1e-9) || (highest > 0 && fire.charge() > 1.25 * highest * (1 + 1e-9));
        return wrong ? 1 : 0;
    }
}
