package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;

/** Importance sampling from the prior: draws of the whole tree, each weighted by the likelihood of the log. */
final class WeightedDraws {

    record Moments(double mean, double sd) {}

    private final List<double[]> sums = new ArrayList<>();
    private final List<int[]> addresses = new ArrayList<>();
    private double total;
    private final int draws;

    WeightedDraws(Priors priors, FleetLog log, Random random, int draws) {
        this.draws = draws;
        for (int n = 0; n < draws; n++) {
            draw(priors, log, random);
        }
    }

    private void draw(Priors priors, FleetLog log, Random random) {
        ProbitNode row = new ProbitNode(
                priors.scatterMedian() * StrictMath.exp(priors.scatterLogSd() * random.nextGaussian()),
                priors.bandMedian() * StrictMath.exp(priors.bandLogSd() * random.nextGaussian()),
                0.15 * random.nextGaussian(),
                0,
                1,
                0);
        double mean = priors.meanSd() * random.nextGaussian();
        double ta = Math.abs(priors.airframeScale() * random.nextGaussian());
        double tj = Math.abs(priors.jointScale() * random.nextGaussian());
        double ts = Math.abs(priors.setupScale() * random.nextGaussian());
        List<Double> values = new ArrayList<>();
        List<int[]> names = new ArrayList<>();
        double weight = 1;
        for (int a = 0; a < log.airframes().size(); a++) {
            double u = mean + ta * random.nextGaussian();
            for (int j = 0; j < log.airframes().get(a).joints().size(); j++) {
                JointLog joint = log.airframes().get(a).joints().get(j);
                double v = u + tj * random.nextGaussian();
                for (int s = 0; s < joint.setups().size(); s++) {
                    SetupLog setup = joint.setups().get(s);
                    double c = v + StrictMath.hypot(ts, setup.inputSd()) * random.nextGaussian();
                    weight *= likelihood(setup, row, c, priors.lapse());
                    values.add(c);
                    names.add(new int[] {a, j, s});
                }
                if (a == 0 && j == 0) {
                    values.add(v + StrictMath.hypot(ts, 0.1) * random.nextGaussian());
                    names.add(new int[] {0, 0, -1});
                }
            }
            if (a == 0) {
                values.add(u + StrictMath.hypot(StrictMath.hypot(ts, 0.1), tj) * random.nextGaussian());
                names.add(new int[] {0, -1, -1});
            }
        }
        values.add(mean + StrictMath.sqrt(ta * ta + tj * tj + ts * ts + 0.01) * random.nextGaussian());
        names.add(new int[] {-1, -1, -1});
        add(values, names, weight);
    }

    private static double likelihood(SetupLog setup, ProbitNode row, double c, double lapse) {
        double product = 1;
        for (Trial trial : setup.trials()) {
            double chance = row.chance(trial.outcome(), trial.logRatio(), c);
            SpeedReading speed = trial.speed();
            product *= speed == null
                    ? (1 - lapse) * chance + lapse / 3
                    : (1 - lapse) * chance * row.speedDensity(speed, trial.logRatio(), c) + lapse / 18;
        }
        return product;
    }

    private void add(List<Double> values, List<int[]> names, double weight) {
        for (int i = sums.size(); i < values.size(); i++) {
            sums.add(new double[2]);
            addresses.add(names.get(i));
        }
        total += weight;
        for (int i = 0; i < values.size(); i++) {
            sums.get(i)[0] += weight * values.get(i);
            sums.get(i)[1] += weight * values.get(i) * values.get(i);
        }
    }

    private Moments moments(int airframe, int joint, int setup) {
        for (int i = 0; i < sums.size(); i++) {
            if (java.util.Arrays.equals(addresses.get(i), new int[] {airframe, joint, setup})) {
                double mean = sums.get(i)[0] / total;
                return new Moments(mean, StrictMath.sqrt(sums.get(i)[1] / total - mean * mean));
            }
        }
        throw new IllegalArgumentException("no such setup");
    }

    Moments setup(int airframe, int joint, int setup) {
        return moments(airframe, joint, setup);
    }

    /** A new setup, of input uncertainty 0.1, of the first joint. */
    Moments newSetup() {
        return moments(0, 0, -1);
    }

    /** A new joint, of input uncertainty 0.1, of the first airframe. */
    Moments newJoint() {
        return moments(0, -1, -1);
    }

    /** A new airframe, of input uncertainty 0.1. */
    Moments newAirframe() {
        return moments(-1, -1, -1);
    }

    double logMarginalLikelihood() {
        return StrictMath.log(total / draws);
    }
}
