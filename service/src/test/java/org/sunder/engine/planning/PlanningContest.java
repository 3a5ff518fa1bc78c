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

    private PlanningContest() {}

    /** Prints the tables of service/docs/planning-contest.md. */
    public static void main(String[] args) {
        int joints = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        List<Strategy> strategies = new ArrayList<>();
        for (double limit : new double[] {1.20, 1.25, 1.35}) {
            Goal goal = new Goal(0.99, Goal.standard().pricePerTest(), StrictMath.log(limit));
            strategies.add(new PlannerStrategy("planner, excess ×%.2f".formatted(limit), goal));
        }
        for (int inARow = 1; inARow <= 2; inARow++) {
            for (double share : new double[] {0.10, 0.20, 0.25}) {
                strategies.add(new FixedLadder(share, inARow));
            }
        }
        strategies.add(new UpAndDown(8));
        strategies.add(new UpAndDown(15));
        table("First airframe of a flyer", strategies, 0, joints, seed);
        table("Ninth airframe of a flyer", strategies.subList(0, 3), 8, joints / 10, seed);
    }

    private static void table(String title, List<Strategy> strategies, int tested, int joints, long seed) {
        System.out.printf("%n%s, %d joints%n%n", title, joints);
        System.out.println("| strategy | tests, mean | 90 % | flight failure, mean | with backup | overcharge, median"
                + " | 90 % | given up | violations |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
        for (Strategy strategy : strategies) {
            System.out.println(row(strategy, tested, joints, seed));
        }
    }

    /** Every strategy meets the same joints; each joint has a random source of its own. */
    static String row(Strategy strategy, int tested, int joints, long seed) {
        LeafPosterior first =
                FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));
        List<Strategy.Result> results = new ArrayList<>();
        List<TrueJoint> truths = new ArrayList<>();
        Random seeds = new Random(seed);
        for (int i = 0; i < joints; i++) {
            Random random = new Random(seeds.nextLong());
            TrueFleet fleet = new TrueFleet(Priors.standard(), random);
            FleetLog log = fleet.log(tested, random);
            truths.add(fleet.joint(random));
            LeafPosterior start = tested == 0
                    ? first
                    : FleetModel.of(log, Priors.standard()).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));
            results.add(strategy.run(truths.get(i), start, random));
        }
        return summary(strategy.name(), truths, results);
    }

    private static String summary(String name, List<TrueJoint> truths, List<Strategy.Result> results) {
        List<Double> overcharges = new ArrayList<>();
        double failure = 0;
        double both = 0;
        for (int i = 0; i < truths.size(); i++) {
            Strategy.Result result = results.get(i);
            if (!Double.isNaN(result.charge())) {
                double alone = truths.get(i).failure(result.charge());
                failure += alone;
                both += alone
                        * (Double.isNaN(result.backup()) ? 1 : truths.get(i).failure(result.backup()));
                overcharges.add(result.charge() / truths.get(i).charge99());
            }
        }
        int flown = overcharges.size();
        List<Double> tests =
                results.stream().map(result -> (double) result.tests()).toList();
        return String.format(
                Locale.ROOT,
                "| %s | %.2f | %.0f | %.2f %% | %.2f %% | ×%.3f | ×%.3f | %.1f %% | %d |",
                name,
                tests.stream().mapToDouble(t -> t).average().orElse(0),
                quantile(tests, 0.9),
                100 * failure / flown,
                100 * both / flown,
                quantile(overcharges, 0.5),
                quantile(overcharges, 0.9),
                100.0 * (truths.size() - flown) / truths.size(),
                results.stream().mapToInt(Strategy.Result::violations).sum());
    }

    private static double quantile(List<Double> values, double p) {
        return values.stream().sorted().toList().get((int) (p * (values.size() - 1)));
    }
}
