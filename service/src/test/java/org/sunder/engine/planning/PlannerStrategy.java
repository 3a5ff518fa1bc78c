package org.sunder.engine.planning;

import java.util.List;
import java.util.Random;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;

/** The planner under test: ceiling three times the handbook charge, measure 0.05 g. */
record PlannerStrategy(String name, Goal goal) implements Strategy {

    private static final int MOST_TESTS = 20;
    private static final double CEILING = 3;

    @Override
    public Result run(TrueJoint joint, LeafPosterior start, Random random) {
        double ceiling = CEILING * joint.handbookCharge();
        PlanningCase on =
                new PlanningCase(start, joint.handbookCharge(), 1e5, ceiling, 0.00005, List.of(), false, false, goal);
        int violations = 0;
        double highest = 0;
        for (int tests = 0; tests <= MOST_TESTS; tests++) {
            NextStep step = Planner.ladder(on, 0);
            if (step instanceof NextStep.Stop stop) {
                double charge = stop.flightCharge().charge();
                boolean wrong = charge > ceiling * (1 + 1e-9)
                        || stop.flightCharge().backup().charge() > ceiling * (1 + 1e-9)
                        || charge > 1.25 * highest * (1 + 1e-9);
                double backup = stop.flightCharge().backup().charge();
                return new Result(tests, charge, backup, violations + (wrong ? 1 : 0));
            }
            if (!(step instanceof NextStep.Fire fire) || tests == MOST_TESTS) {
                return new Result(tests, Double.NaN, Double.NaN, violations);
            }
            boolean wrong = fire.charge() > ceiling * (1 + 1e-9)
                    || (highest > 0 && fire.charge() > 1.25 * highest * (1 + 1e-9));
            violations += wrong ? 1 : 0;
            highest = Math.max(highest, fire.charge());
            Outcome outcome = joint.fire(fire.charge(), random);
            on = on.after(fire.steps(), outcome);
        }
        throw new IllegalStateException("not reached");
    }
}
