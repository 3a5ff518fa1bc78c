package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;

/**
 * Whether intervals of the correction κ hold what they say where they start from a pool, over flyers drawn from what the pool assumes
 * of them. Arguments: pools (400), joints of each (25), flyers in each (25), seed (1).
 */
public final class PoolCalibration {

    private static final Priors BASE = Priors.standard();
    private static final double[] MEAN_SPREADS = {0.10, 0.166, 0.166, 0.25};
    private static final double[] LOG_SPREADS = {0.15, 0.27, 0.27, 0.40};
    private static final double LOG_SD = 0.42;
    private static final double MEAN_SD = 0.25;

    private PoolCalibration() {}

    /** Positions of truths in what is believed of them: of flyers like those of the pool, and as the prior has it. */
    private record Found(List<double[]> like, List<double[]> mixed) {}

    /** Prints the table of service/docs/calibration.md. */
    public static void main(String[] args) {
        int pools = args.length > 0 ? Integer.parseInt(args[0]) : 400;
        int joints = args.length > 1 ? Integer.parseInt(args[1]) : 25;
        int flyers = args.length > 2 ? Integer.parseInt(args[2]) : 25;
        Random seeds = new Random(args.length > 3 ? Long.parseLong(args[3]) : 1);
        long[] own = IntStream.range(0, pools).mapToLong(i -> seeds.nextLong()).toArray();
        List<Found> found = IntStream.range(0, pools)
                .parallel()
                .mapToObj(i -> pool(joints, flyers, new Random(own[i])))
                .toList();
        System.out.println("| what | cases | 50 % | 80 % | 90 % | 95 % | failures at the 99 % charge |");
        System.out.println("|---|---|---|---|---|---|---|");
        System.out.println(CalibrationReport.row(
                "one flyer in ten drawn from the base prior, as assumed",
                found.stream().flatMap(each -> each.mixed().stream()).toList()));
        System.out.println(CalibrationReport.row(
                "every flyer like those of the pool",
                found.stream().flatMap(each -> each.like().stream()).toList()));
    }

    private static Found pool(int joints, int flyers, Random random) {
        Common common = new Common(random);
        List<FlyerEvidence> evidence = new ArrayList<>();
        for (int f = 0; f < flyers; f++) {
            evidence.add(FlyerEvidence.of(log(common.flyer(random), random), BASE));
        }
        Priors taught = BASE.with(FlyerPrior.of(Pool.of(evidence, BASE).learned(), BASE));
        LeafPosterior untested =
                FleetModel.of(FleetLog.empty(), taught).leaf(new Leaf.NewAirframe(CalibrationReport.INPUT_SD));
        List<double[]> like = new ArrayList<>();
        List<double[]> mixed = new ArrayList<>();
        for (int j = 0; j < joints; j++) {
            double[] judged = judged(untested, common.flyer(random));
            like.add(judged);
            boolean unlike = random.nextDouble() < FlyerPrior.BASE_SHARE;
            mixed.add(unlike ? judged(untested, new CalibrationReport.Truth(random)) : judged);
        }
        return new Found(like, mixed);
    }

    /** Two airframes of two joints, each joint tested. */
    private static FleetLog log(CalibrationReport.Truth truth, Random random) {
        List<AirframeLog> airframes = new ArrayList<>();
        for (int a = 0; a < 2; a++) {
            List<JointLog> joints = new ArrayList<>();
            double airframe = random.nextGaussian();
            for (int j = 0; j < 2; j++) {
                double c = truth.correction(airframe, random.nextGaussian());
                joints.add(new JointLog(List.of(new SetupLog(CalibrationReport.INPUT_SD, truth.trials(c)))));
            }
            airframes.add(new AirframeLog(joints));
        }
        return new FleetLog(airframes);
    }

    private static double[] judged(LeafPosterior untested, CalibrationReport.Truth truth) {
        double c = truth.correction();
        LeafPosterior posterior = untested;
        for (var trial : truth.trials(c)) {
            posterior = posterior.after(trial);
        }
        return truth.judge(posterior, c);
    }

    /** What the flyers of one pool have in common, drawn from the pool's own priors. */
    private static final class Common {

        private final double[] centres;
        private final double meanSpread;
        private final double logSpread;

        Common(Random random) {
            centres = new double[] {
                MEAN_SD * random.nextGaussian(),
                StrictMath.log(BASE.scatterMedian()) + LOG_SD * random.nextGaussian(),
                StrictMath.log(BASE.bandMedian()) + LOG_SD * random.nextGaussian()
            };
            meanSpread = MEAN_SPREADS[random.nextInt(MEAN_SPREADS.length)];
            logSpread = LOG_SPREADS[random.nextInt(LOG_SPREADS.length)];
        }

        CalibrationReport.Truth flyer(Random random) {
            return new CalibrationReport.Truth(
                    random,
                    centres[0] + meanSpread * random.nextGaussian(),
                    StrictMath.exp(centres[1] + logSpread * random.nextGaussian()),
                    StrictMath.exp(centres[2] + logSpread * random.nextGaussian()));
        }
    }
}
