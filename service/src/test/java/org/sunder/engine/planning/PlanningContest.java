package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.FleetModel;
import org.sunder.engine.learning.Leaf;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Priors;

/** The planner against fixed ladders and up-and-down on simulated joints. Arguments: joints (10000) and seed (1). */
public final class PlanningContest {

    private static final double INPUT_SD = 0.05;

    private PlanningContest() {}

    /** Prints the table of service/docs/planning-contest.md. */
    public static void main(String[] args) {
        int joints = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        System.out.println("| strategy | tests, mean | 90 % | flight failure, mean | overcharge, median | 90 % |"
                + " given up | violations |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        for (Strategy strategy : strategies()) {
            System.out.println(row(strategy, joints, seed));
        }
    }

    private static List<Strategy> strategies() {
        LeafPosterior untested =
                FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(INPUT_SD));
        List<Strategy> strategies = new ArrayList<>();
        strategies.add(new PlannerStrategy("planner", untested, Goal.standard()));
        for (int inARow = 1; inARow <= 2; inARow++) {
            for (double share : new double[] {0.10, 0.20, 0.25}) {
                strategies.add(new FixedLadder(share, inARow));
            }
        }
        strategies.add(new UpAndDown(8));
        strategies.add(new UpAndDown(15));
        return strategies;
    }

    /** Every strategy meets the same joints; each joint has a random source of its own. */
    private static String row(Strategy strategy, int joints, long seed) {
        List<Double> tests = new ArrayList<>();
        List<Double> overcharges = new ArrayList<>();
        double failure = 0;
        int violations = 0;
        Random seeds = new Random(seed);
        for (int i = 0; i < joints; i++) {
            Random random = new Random(seeds.nextLong());
            TrueJoint joint = TrueJoint.draw(Priors.standard(), INPUT_SD, random);
            Strategy.Result result = strategy.run(joint, random);
            tests.add((double) result.tests());
            violations += result.violations();
            if (!Double.isNaN(result.charge())) {
                failure += joint.failure(result.charge());
                overcharges.add(result.charge() / joint.charge99());
            }
        }
        return String.format(
                Locale.ROOT,
                "| %s | %.2f | %.0f | %.2f %% | ×%.3f | ×%.3f | %.1f %% | %d |",
                strategy.name(),
                tests.stream().mapToDouble(t -> t).average().orElse(0),
                quantile(tests, 0.9),
                100 * failure / overcharges.size(),
                quantile(overcharges, 0.5),
                quantile(overcharges, 0.9),
                100.0 * (joints - overcharges.size()) / joints,
                violations);
    }

    private static double quantile(List<Double> values, double p) {
        return values.stream().sorted().toList().get((int) (p * (values.size() - 1)));
    }
}
