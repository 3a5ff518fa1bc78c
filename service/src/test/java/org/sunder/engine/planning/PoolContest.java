package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.FlyerEvidence;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.Pool;

/**
 * The first airframe of a flyer after a pool of others, against the same flyer alone, on simulated joints. Arguments: pools (20),
 * joints of new flyers of each (200), sharing flyers (25), seed (1).
 *
 * <p>Each pool draws M, A, B, T and S from the level above the flyer; each of its flyers has two airframes of two joints, each
 * joint tested by the planner as a first one.
 */
public final class PoolContest {

    private static final Priors BASE = Priors.standard();
    private static final double[] MEAN_SPREADS = {0.10, 0.166, 0.166, 0.25};
    private static final double[] LOG_SPREADS = {0.15, 0.27, 0.27, 0.40};
    private static final double[] SHARES = {0.05, 0.10, 0.20};
    private static final double MEASURE = 0.00005;
    private static final Goal GOAL = Goal.standard();
    private static final double[] EXCESSES = {1.12, 1.20, 1.30, 1.50};

    private final int pools;
    private final int joints;
    private final int flyers;
    private final long seed;
    private final List<PlanTree> alone = trees(new FlyerPrior(List.of(FlyerPrior.base(BASE, 1))), GOAL);

    private PoolContest(int pools, int joints, int flyers, long seed) {
        this.pools = pools;
        this.joints = joints;
        this.flyers = flyers;
        this.seed = seed;
    }

    /** Prints the tables of service/docs/pool-contest.md. */
    public static void main(String[] args) {
        int[] given = IntStream.of(20, 200, 25, 1).toArray();
        for (int i = 0; i < args.length; i++) {
            given[i] = Integer.parseInt(args[i]);
        }
        new PoolContest(given[0], given[1], given[2], given[3]).print();
    }

    /** What flyers of one pool have in common. */
    private record Common(double mean, double logScatter, double logBand, double meanSpread, double logSpread) {

        Common(Random random) {
            this(
                    0.25 * random.nextGaussian(),
                    StrictMath.log(0.10) + 0.42 * random.nextGaussian(),
                    StrictMath.log(0.15) + 0.42 * random.nextGaussian(),
                    MEAN_SPREADS[random.nextInt(MEAN_SPREADS.length)],
                    LOG_SPREADS[random.nextInt(LOG_SPREADS.length)]);
        }

        Flyer flyer(Random random) {
            return new Flyer(
                    mean + meanSpread * random.nextGaussian(),
                    StrictMath.exp(logScatter + logSpread * random.nextGaussian()),
                    StrictMath.exp(logBand + logSpread * random.nextGaussian()),
                    StrictMath.abs(BASE.airframeScale() * random.nextGaussian()),
                    StrictMath.abs(BASE.jointScale() * random.nextGaussian()),
                    StrictMath.hypot(BASE.setupScale() * random.nextGaussian(), TrueFleet.INPUT_SD));
        }
    }

    private record Flyer(double mean, double sigma, double delta, double airframeSd, double jointSd, double setupSd) {

        double airframe(Random random) {
            return mean + airframeSd * random.nextGaussian();
        }

        TrueJoint joint(double airframe, int which, double scatter, TrueJoint.Truth truth, Random random) {
            double c = airframe + jointSd * random.nextGaussian() + setupSd * random.nextGaussian();
            return new TrueJoint(TrueFleet.handbookCharge(which), c, scatter * sigma, delta, truth);
        }
    }

    /** How a new flyer may differ from those of the pool. */
    private enum Unlike {
        ALIKE("a flyer like those of the pool", 1, TrueJoint.Truth.AS_ASSUMED),
        WIDE("scatter twice the flyer's share of the pool's", 2, TrueJoint.Truth.AS_ASSUMED),
        LOW("charges ×0.6 of the pool's", 1, TrueJoint.Truth.HANDBOOK_HIGH),
        HIGH("charges ×1.6 of the pool's", 1, TrueJoint.Truth.HANDBOOK_LOW);

        private final String words;
        private final double scatter;
        private final TrueJoint.Truth truth;

        Unlike(String words, double scatter, TrueJoint.Truth truth) {
            this.words = words;
            this.scatter = scatter;
            this.truth = truth;
        }
    }

    private void print() {
        Map<Unlike, List<Tally>> tallies = new EnumMap<>(Unlike.class);
        for (Unlike unlike : Unlike.values()) {
            tallies.put(
                    unlike, Stream.generate(Tally::new).limit(SHARES.length + 1).toList());
        }
        List<Tally> frontier =
                Stream.generate(Tally::new).limit(EXCESSES.length).toList();
        Random seeds = new Random(seed);
        for (int p = 0; p < pools; p++) {
            Random random = new Random(seeds.nextLong());
            Common common = new Common(random);
            List<FlyerEvidence> evidence = IntStream.range(0, flyers)
                    .mapToObj(f -> FlyerEvidence.of(tested(common.flyer(random), random), BASE))
                    .toList();
            List<FlyerPrior.Part> learned = Pool.of(evidence, BASE).learned();
            List<List<PlanTree>> taught = new ArrayList<>(List.of(alone));
            for (double share : SHARES) {
                taught.add(trees(FlyerPrior.of(learned, BASE, share), GOAL));
            }
            List<List<PlanTree>> limited = new ArrayList<>();
            for (double excess : EXCESSES) {
                Goal goal = new Goal(GOAL.reliability(), GOAL.pricePerTest(), StrictMath.log(excess));
                limited.add(trees(FlyerPrior.of(learned, BASE), goal));
            }
            for (Unlike unlike : Unlike.values()) {
                for (int j = 0; j < joints; j++) {
                    long own = random.nextLong();
                    for (int way = 0; way < taught.size(); way++) {
                        Random same = new Random(own);
                        Flyer flyer = common.flyer(same);
                        int which = j % TrueFleet.CLASSES;
                        TrueJoint joint = flyer.joint(flyer.airframe(same), which, unlike.scatter, unlike.truth, same);
                        tallies.get(unlike)
                                .get(way)
                                .add(joint, taught.get(way).get(which).run(joint, same));
                    }
                    for (int limit = 0; limit < EXCESSES.length && unlike == Unlike.ALIKE; limit++) {
                        Random same = new Random(own);
                        Flyer flyer = common.flyer(same);
                        int which = j % TrueFleet.CLASSES;
                        TrueJoint joint = flyer.joint(flyer.airframe(same), which, unlike.scatter, unlike.truth, same);
                        frontier.get(limit)
                                .add(joint, limited.get(limit).get(which).run(joint, same));
                    }
                }
            }
        }
        for (Unlike unlike : Unlike.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "%n## First airframe: %s, %d joints%n%n%s%n",
                    unlike.words,
                    pools * joints,
                    Tally.HEADER);
            for (int way = 0; way <= SHARES.length; way++) {
                String name = way == 0
                        ? "alone"
                        : String.format(
                                Locale.ROOT,
                                "after %d flyers, base prior %.0f %%%s",
                                flyers,
                                100 * SHARES[way - 1],
                                SHARES[way - 1] == FlyerPrior.BASE_SHARE ? " (as served)" : "");
                System.out.println(tallies.get(unlike).get(way).row(name, 1));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%n## The frontier: a flyer like those of the pool, as served, stopping at another excess%n%n%s%n",
                Tally.HEADER);
        for (int limit = 0; limit < EXCESSES.length; limit++) {
            String name = String.format(
                    Locale.ROOT,
                    "at ×%.2f%s",
                    EXCESSES[limit],
                    StrictMath.log(EXCESSES[limit]) == GOAL.excessLimit() ? " (as served)" : "");
            System.out.println(frontier.get(limit).row(name, 1));
        }
    }

    /** Two airframes of two joints. */
    private FleetLog tested(Flyer flyer, Random random) {
        List<AirframeLog> airframes = new ArrayList<>();
        for (int a = 0; a < 2; a++) {
            double airframe = flyer.airframe(random);
            List<JointLog> logs = new ArrayList<>();
            for (int j = 0; j < 2; j++) {
                int which = random.nextInt(TrueFleet.CLASSES);
                TrueJoint joint = flyer.joint(airframe, which, 1, TrueJoint.Truth.AS_ASSUMED, random);
                logs.add(new JointLog(List.of(new SetupLog(
                        TrueFleet.INPUT_SD, alone.get(which).run(joint, random).trials()))));
            }
            airframes.add(new AirframeLog(logs));
        }
        return new FleetLog(airframes);
    }

    private static List<PlanTree> trees(FlyerPrior prior, Goal goal) {
        LeafPosterior start =
                FleetModel.of(FleetLog.empty(), BASE.with(prior)).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));
        return IntStream.range(0, TrueFleet.CLASSES)
                .mapToObj(which -> PlanTree.start(start, TrueFleet.handbookCharge(which), MEASURE, List.of(), goal))
                .toList();
    }
}
