package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;

/**
 * Whether intervals of the correction κ hold what they say, over joints drawn from the prior. Arguments: joints
 * (10000), fleets (1000), seed (1).
 */
public final class CalibrationReport {

    static final double INPUT_SD = 0.05;
    private static final Priors PRIORS = Priors.standard();

    private CalibrationReport() {}

    /** Prints the tables of service/docs/calibration.md. */
    public static void main(String[] args) {
        int joints = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int fleets = args.length > 1 ? Integer.parseInt(args[1]) : 1000;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        System.out.println("| what | cases | 50 % | 80 % | 90 % | 95 % | failures at the 99 % charge |");
        System.out.println("|---|---|---|---|---|---|---|");
        Random seeds = new Random(seed);
        LeafPosterior untested = FleetModel.of(FleetLog.empty(), PRIORS).leaf(new Leaf.NewAirframe(INPUT_SD));
        List<double[]> single = new ArrayList<>();
        for (int i = 0; i < joints; i++) {
            single.add(single(untested, new Random(seeds.nextLong())));
        }
        System.out.println(row("joint of a first airframe, 1 to 6 tests", single));
        Bins bins = new Bins();
        for (int i = 0; i < joints; i++) {
            predict(untested, new Random(seeds.nextLong()), bins);
        }
        List<double[]> fleet = new ArrayList<>();
        for (int i = 0; i < fleets; i++) {
            fleet.addAll(fleet(new Random(seeds.nextLong())));
        }
        System.out.println(row("joint of a fleet of 6 airframes, 1 to 6 tests each", fleet.subList(0, fleets)));
        System.out.println(row("new airframe of that fleet, no test", fleet.subList(fleets, 2 * fleets)));
        bins.print();
    }

    /** One more firing of a joint of a first airframe after 0 to 6 tests: its chance of separating, and whether it did. */
    private static void predict(LeafPosterior untested, Random random, Bins bins) {
        Truth truth = new Truth(random);
        double c = truth.correction();
        List<Trial> trials = truth.trials(c);
        LeafPosterior posterior = untested;
        for (Trial trial : trials.subList(0, random.nextInt(trials.size() + 1))) {
            posterior = posterior.after(trial);
        }
        double x = 0.15 + 0.4 * random.nextGaussian();
        bins.add(posterior.pSeparated(x), truth.separates(x, c));
    }

    /** Predicted chances in ten bins against what happened. */
    private static final class Bins {

        private final double[] predicted = new double[10];
        private final int[] happened = new int[10];
        private final int[] count = new int[10];

        void add(double chance, boolean separated) {
            int bin = Math.min(9, (int) (10 * chance));
            predicted[bin] += chance;
            happened[bin] += separated ? 1 : 0;
            count[bin]++;
        }

        void print() {
            System.out.println(
                    "\n| predicted chance of separating | firings | mean predicted | separated | in standard errors |");
            System.out.println("|---|---|---|---|---|");
            for (int bin = 0; bin < 10; bin++) {
                double mean = predicted[bin] / count[bin];
                double share = (double) happened[bin] / count[bin];
                double error = StrictMath.sqrt(mean * (1 - mean) / count[bin]);
                System.out.printf(
                        Locale.ROOT,
                        "| %d to %d %% | %d | %.1f %% | %.1f %% | %+.1f |%n",
                        10 * bin,
                        10 * bin + 10,
                        count[bin],
                        100 * mean,
                        100 * share,
                        (share - mean) / error);
            }
        }
    }

    /** SetupPosition of the true correction in its posterior, and the true chance of failing at the predictive 99 % charge. */
    private static double[] single(LeafPosterior untested, Random random) {
        Truth truth = new Truth(random);
        double c = truth.correction();
        LeafPosterior posterior = untested;
        for (Trial trial : truth.trials(c)) {
            posterior = posterior.after(trial);
        }
        return truth.judge(posterior, c);
    }

    private static List<double[]> fleet(Random random) {
        Truth truth = new Truth(random);
        List<AirframeLog> logs = new ArrayList<>();
        double first = 0;
        for (int i = 0; i < 6; i++) {
            double c = truth.correction();
            first = i == 0 ? c : first;
            logs.add(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(INPUT_SD, truth.trials(c)))))));
        }
        FleetModel model = FleetModel.of(new FleetLog(logs), PRIORS);
        double[] tested = truth.judge(model.leaf(new Leaf.Logged(0, 0, 0)), first);
        return List.of(tested, truth.judge(model.leaf(new Leaf.NewAirframe(INPUT_SD)), truth.correction()));
    }

    static String row(String name, List<double[]> cases) {
        StringBuilder line = new StringBuilder("| " + name + " | " + cases.size() + " |");
        for (double level : new double[] {0.5, 0.8, 0.9, 0.95}) {
            long inside = cases.stream()
                    .filter(u -> Math.abs(u[0] - 0.5) <= level / 2)
                    .count();
            line.append(String.format(Locale.ROOT, " %.1f %% |", 100.0 * inside / cases.size()));
        }
        double failure = cases.stream().mapToDouble(u -> u[1]).average().orElse(0);
        return line + String.format(Locale.ROOT, " %.2f %% |", 100 * failure);
    }

    /** The fleet's true parameters. */
    static final class Truth {

        private final Random random;
        private final double mean;
        private final double airframes;
        private final double rest;
        private final double spread;
        private final ProbitNode row;

        /** Drawn from the prior. */
        Truth(Random random) {
            this(
                    random,
                    PRIORS.meanSd() * random.nextGaussian(),
                    PRIORS.scatterMedian() * StrictMath.exp(PRIORS.scatterLogSd() * random.nextGaussian()),
                    PRIORS.bandMedian() * StrictMath.exp(PRIORS.bandLogSd() * random.nextGaussian()));
        }

        /** Of a mean, a scatter and a band; the spreads between levels are drawn from the prior. */
        Truth(Random random, double mean, double sigma, double delta) {
            this.random = random;
            this.mean = mean;
            double ta = PRIORS.airframeScale() * random.nextGaussian();
            double tj = PRIORS.jointScale() * random.nextGaussian();
            double ts = PRIORS.setupScale() * random.nextGaussian();
            this.airframes = Math.abs(ta);
            this.rest = StrictMath.sqrt(tj * tj + ts * ts + INPUT_SD * INPUT_SD);
            this.spread = StrictMath.sqrt(ta * ta + tj * tj + ts * ts + INPUT_SD * INPUT_SD);
            this.row = ProbitNode.of(sigma, delta);
        }

        double correction() {
            return mean + spread * random.nextGaussian();
        }

        /** A joint of an airframe, both given by how many standard deviations they lie off. */
        double correction(double airframe, double joint) {
            return mean + airframes * airframe + rest * joint;
        }

        /** 1 to 6 tests at charges near what separates, one in fifty of them lapsed. */
        List<Trial> trials(double c) {
            List<Trial> trials = new ArrayList<>();
            int count = 1 + random.nextInt(6);
            List<Outcome> outcomes = List.of(Outcome.values());
            for (int i = 0; i < count; i++) {
                double x = 0.1 + 0.3 * random.nextGaussian();
                double z = x - c + row.sigma() * random.nextGaussian();
                Outcome outcome = z < 0 ? Outcome.NONE : z < row.delta() ? Outcome.PARTIAL : Outcome.SEPARATED;
                boolean lapsed = random.nextDouble() < PRIORS.lapse();
                trials.add(new Trial(x, lapsed ? outcomes.get(random.nextInt(3)) : outcome));
            }
            return trials;
        }

        boolean separates(double x, double c) {
            return x - c + row.sigma() * random.nextGaussian() >= row.delta();
        }

        double[] judge(LeafPosterior posterior, double c) {
            double failure = 1 - row.chance(Outcome.SEPARATED, posterior.logRatioFor(0.99), c);
            return new double[] {posterior.correctionChance(c), failure};
        }
    }
}
