package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** What films of the tests are worth, on simulated joints. Arguments: joints (1000), seed (1), joints tested after five others (a quarter). */
public final class FilmContest {

    private static final Priors PRIORS = Priors.standard();
    private static final double MEASURE = 0.00005;
    private static final int EARLIER = 5;
    private static final int RESAMPLED = 200;

    private static final String HEADER =
            "| way | tests, mean | fewer than without a film | 90 % | flight failure, mean | overcharge, median | 90 % | mean ln"
                    + " | given up | violations |\n|---|---|---|---|---|---|---|---|---|---|";

    private static final LeafPosterior UNTESTED =
            FleetModel.of(FleetLog.empty(), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));

    private final long seed;
    private final List<PlanTree> first = new ArrayList<>();

    private FilmContest(long seed) {
        this.seed = seed;
        for (int which = 0; which < TrueFleet.CLASSES; which++) {
            first.add(tree(UNTESTED, which));
        }
    }

    /** Prints the table of films in service/docs/planning-contest.md. */
    public static void main(String[] args) {
        FilmContest contest = new FilmContest(args.length > 1 ? Long.parseLong(args[1]) : 1);
        int joints = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        int later = args.length > 2 ? Integer.parseInt(args[2]) : joints / 4;
        System.out.println(HEADER);
        List<Double> unfilmed = contest.row(
                "no film", joints, null, (fleet, joint, which, random) -> contest.unread(which, joint, random));
        for (double sd : new double[] {0.05, 0.10}) {
            contest.row(
                    percent(sd),
                    joints,
                    unfilmed,
                    (fleet, joint, which, random) -> MeasuredSpeeds.run(
                            contest.first.get(which).on().filmed(MeasuredSpeeds.filming(sd)),
                            List.of(),
                            sd,
                            fleet,
                            joint,
                            random));
        }
        List<Double> unfilmedLater = contest.row(
                "no film, after five joints not filmed",
                later,
                null,
                (fleet, joint, which, random) -> contest.later(null, fleet, joint, which, random));
        contest.row(
                percent(0.05) + ", after five joints filmed so",
                later,
                unfilmedLater,
                (fleet, joint, which, random) -> contest.later(0.05, fleet, joint, which, random));
        for (double sd : new double[] {0.05, 0.10}) {
            contest.row(
                    percent(sd) + ", read but not counted on",
                    joints,
                    unfilmed,
                    (fleet, joint, which, random) ->
                            MeasuredSpeeds.run(contest.first.get(which).on(), List.of(), sd, fleet, joint, random));
        }
    }

    private static String percent(double sd) {
        return "film at " + Math.round(100 * sd) + " %";
    }

    private interface Way {
        PlanTree.Result run(TrueFleet fleet, TrueJoint joint, int which, Random random);
    }

    /**
     * Every way meets the same joints; each joint has a random source of its own.
     *
     * @param unfilmed tests of each joint in the row it is compared with, or null in that row itself
     * @return tests of each joint
     */
    private List<Double> row(String name, int joints, @Nullable List<Double> unfilmed, Way way) {
        List<Long> seeds = new Random(seed).longs(joints).boxed().toList();
        List<Met> all = IntStream.range(0, joints)
                .parallel()
                .mapToObj(i -> met(i, seeds.get(i), way))
                .toList();
        Tally tally = new Tally();
        all.forEach(met -> tally.add(met.joint(), met.result()));
        List<Double> over = tally.overcharges();
        List<Double> fewer = new ArrayList<>();
        for (int i = 0; i < joints; i++) {
            fewer.add(unfilmed == null ? 0 : unfilmed.get(i) - tally.tests().get(i));
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f ± %.2f | %.2f ± %.2f | %.0f | %.2f %% | ×%.3f ± %.3f | ×%.3f ± %.3f | %.3f ± %.3f | %.1f %% | %d |%n",
                name,
                tally.meanTests(),
                error(tally.tests()),
                mean(fewer),
                error(fewer),
                Tally.quantile(tally.tests(), 0.9),
                100 * tally.failure(1),
                Tally.quantile(over, 0.5),
                quantileError(over, 0.5),
                Tally.quantile(over, 0.9),
                quantileError(over, 0.9),
                mean(over.stream().map(Math::log).toList()),
                error(over.stream().map(Math::log).toList()),
                100 * tally.givenUp(),
                tally.violations());
        return tally.tests();
    }

    private record Met(TrueJoint joint, PlanTree.Result result) {}

    private static Met met(int i, long seed, Way way) {
        Random random = new Random(seed);
        TrueFleet fleet = new TrueFleet(PRIORS, random);
        int which = i % TrueFleet.CLASSES;
        TrueJoint joint = fleet.setup(fleet.joint(random), which, TrueJoint.Truth.AS_ASSUMED, random);
        return new Met(joint, way.run(fleet, joint, which, random));
    }

    /** Along a plan that all joints of a class share. */
    private PlanTree.Result unread(int which, TrueJoint joint, Random random) {
        PlanTree tree = first.get(which);
        synchronized (tree) {
            return tree.run(joint, random);
        }
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(0);
    }

    /** Standard error of a mean. */
    private static double error(List<Double> values) {
        double mean = mean(values);
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (values.size() - 1.0) / values.size());
    }

    /** Standard error of a quantile, from 200 samples drawn from the values with replacement. */
    private double quantileError(List<Double> values, double p) {
        Random random = new Random(seed);
        List<Double> drawn = new ArrayList<>();
        for (int i = 0; i < RESAMPLED; i++) {
            drawn.add(Tally.quantile(
                    random.ints(values.size(), 0, values.size())
                            .mapToObj(values::get)
                            .toList(),
                    p));
        }
        return error(drawn) * Math.sqrt(drawn.size());
    }

    private PlanTree.Result later(@Nullable Double sd, TrueFleet fleet, TrueJoint joint, int which, Random random) {
        List<AirframeLog> before = new ArrayList<>();
        for (int i = 0; i < EARLIER; i++) {
            TrueJoint earlier = fleet.setup(fleet.joint(random), i, joint.truth(), random);
            List<Trial> trials = unread(i, earlier, random).trials();
            List<Trial> told = sd == null
                    ? trials
                    : trials.stream()
                            .map(trial -> MeasuredSpeeds.read(trial, sd, fleet, earlier, random))
                            .toList();
            before.add(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(TrueFleet.INPUT_SD, told))))));
        }
        PlanTree start =
                tree(FleetModel.of(new FleetLog(before), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD)), which);
        return sd == null
                ? start.run(joint, random)
                : MeasuredSpeeds.run(start.on().filmed(MeasuredSpeeds.filming(sd)), before, sd, fleet, joint, random);
    }

    private static PlanTree tree(LeafPosterior posterior, int which) {
        return PlanTree.start(posterior, TrueFleet.handbookCharge(which), MEASURE, List.of(), Goal.standard());
    }
}
