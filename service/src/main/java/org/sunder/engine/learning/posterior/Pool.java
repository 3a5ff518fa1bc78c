package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.quadrature.FastNormal;

/**
 * The level above the flyer: what several flyers' rockets say of a flyer not yet known.
 *
 * <p>Problem: from each flyer's evidence on (μ, ln σ, ln δ), find the prior of another flyer. Model: μ_f ~ N(M, T²), ln σ_f ~
 * N(A, S²), ln δ_f ~ N(B, S²), independent of one another given M ~ N(0, 0.25²), A ~ N(ln 0.10, 0.42²), B ~ N(ln 0.15, 0.42²), T
 * one of 0.10, 0.166, 0.25 and S one of 0.15, 0.27, 0.40, each with weights ¼, ½, ¼. Method: for each (T, S) every flyer's
 * likelihood is smoothed by the normals, which gives the likelihood of (M, A, B) on a grid; the grid follows the posterior until
 * it carries it; its moments, with T² and S² added, are one normal of the prior, and its mass is that normal's weight. That
 * replaces the posterior of (M, A, B) by a normal, which is narrow against T and S where flyers are five or more. No random
 * numbers; the sums run in the order given. Cost: linear in flyers.
 */
public final class Pool {

    private static final double[] WEIGHTS = {0.25, 0.5, 0.25};
    private static final double[] MEAN_SPREADS = {0.10, 0.166, 0.25};
    private static final double[] LOG_SPREADS = {0.15, 0.27, 0.40};
    private static final double[] SDS = {0.25, 0.42, 0.42};

    /** Nodes of each of M, A and B, this many standard deviations apart: to ±3.6. */
    private static final int SIZE = 13;

    private static final double APART = 0.6;
    private static final int ROUNDS = 12;

    /** Flyers looked at together. */
    private static final int BLOCK = 32;

    private static final double NEGLIGIBLE = 1e-9;

    private final List<Spread> spreads;
    /** [flyer][spread]: the same without that flyer. */
    private final Moments[][] without;

    private Pool(List<Spread> spreads, Moments[][] without) {
        this.spreads = spreads;
        this.without = without;
    }

    /** One (T, S), with the posterior of (M, A, B) given it. */
    private record Spread(double mean, double log, double weight, Moments moments) {}

    /** Log mass, mean and covariance of (M, A, B). */
    private static final class Moments {

        private final double logMass;
        private final double[] mean;
        private final double[][] covariance;

        Moments(double logMass, double[] mean, double[][] covariance) {
            this.logMass = logMass;
            this.mean = mean;
            this.covariance = covariance;
        }

        double logMass() {
            return logMass;
        }

        double sd(int axis) {
            return FastMath.sqrt(covariance[axis][axis]);
        }
    }

    /** Where (M, A, B) is looked at. */
    private static final class Box {

        private final double[] centre;
        private final double[] sd;

        Box(double[] centre, double[] sd) {
            this.centre = centre;
            this.sd = sd;
        }

        double node(int axis, int i) {
            return centre[axis] + sd[axis] * APART * (i - (SIZE - 1) / 2);
        }

        double logCell() {
            return FastMath.log(sd[0] * sd[1] * sd[2] * APART * APART * APART);
        }

        /** Whether the posterior is as wide as the box was made for, and in its middle. */
        boolean fits(Moments moments) {
            return IntStream.range(0, SDS.length)
                    .allMatch(axis -> moments.sd(axis) > 0.8 * sd[axis]
                            && Math.abs(moments.mean[axis] - centre[axis]) < 0.3 * sd[axis]);
        }

        Box next(Moments moments) {
            double[] narrower = new double[SDS.length];
            for (int axis = 0; axis < narrower.length; axis++) {
                narrower[axis] = Math.max(moments.sd(axis), 0.25 * sd[axis]);
            }
            return new Box(moments.mean, narrower);
        }
    }

    /**
     * What flyers together teach.
     *
     * @param base priors of a flyer of whom nothing is known from others
     */
    public static Pool of(List<FlyerEvidence> flyers, Priors base) {
        int all = MEAN_SPREADS.length * LOG_SPREADS.length;
        Fit[] fits = IntStream.range(0, all)
                .mapToObj(ts ->
                        new Fit(MEAN_SPREADS[ts / LOG_SPREADS.length], LOG_SPREADS[ts % LOG_SPREADS.length], base))
                .toArray(Fit[]::new);
        List<Fit> open = List.of(fits);
        for (int round = 0; !open.isEmpty(); round++) {
            boolean last = round == ROUNDS;
            List<Fit> summing = open;
            summing.forEach(fit -> fit.begin(base));
            inBlocks(flyers, (first, block) -> summing.parallelStream().forEach(fit -> fit.add(block)));
            open = summing.stream().filter(fit -> !fit.settled(last)).toList();
        }
        Moments[][] without = new Moments[flyers.size()][all];
        inBlocks(
                flyers,
                (first, block) -> IntStream.range(0, all).parallel().forEach(ts -> {
                    for (int f = 0; f < block.size(); f++) {
                        without[first + f][ts] = fits[ts].without(block.get(f));
                    }
                }));
        List<Spread> spreads = new ArrayList<>();
        for (int ts = 0; ts < all; ts++) {
            double weight = WEIGHTS[ts / LOG_SPREADS.length] * WEIGHTS[ts % LOG_SPREADS.length];
            spreads.add(
                    new Spread(fits[ts].smoother.meanSpread, fits[ts].smoother.logSpread, weight, fits[ts].moments));
        }
        return new Pool(spreads, without);
    }

    /** What is done with the likelihoods of some flyers, the first of which stands at an index. */
    @FunctionalInterface
    private interface Block {
        void take(int first, List<Likelihood> likelihoods);
    }

    /** A flyer's likelihood at nodes of σ, δ and μ. */
    private static final class Likelihood {

        private final FlyerEvidence.Axes axes;
        private final double[][][] values;

        Likelihood(FlyerEvidence flyer) {
            axes = flyer.axes();
            values = flyer.likelihood();
        }
    }

    /** Some flyers at a time: the likelihood of all at once would not fit into memory. */
    private static void inBlocks(List<FlyerEvidence> flyers, Block block) {
        for (int first = 0; first < flyers.size(); first += BLOCK) {
            int end = Math.min(flyers.size(), first + BLOCK);
            block.take(
                    first,
                    flyers.subList(first, end).parallelStream()
                            .map(Likelihood::new)
                            .toList());
        }
    }

    /** The posterior of (M, A, B) given one (T, S), on a grid that follows it until it carries it. */
    private static final class Fit {

        private final Smoother smoother;
        private Box box;
        private double[] total = new double[0];
        private Moments moments = new Moments(0, new double[0], new double[0][]);

        Fit(double meanSpread, double logSpread, Priors base) {
            smoother = new Smoother(meanSpread, logSpread);
            box = new Box(centre(base), SDS);
        }

        /** Its prior, before any flyer. */
        void begin(Priors base) {
            double[] centre = centre(base);
            total = new double[SIZE * SIZE * SIZE];
            for (int i = 0; i < total.length; i++) {
                int[] at = {i / (SIZE * SIZE), i / SIZE % SIZE, i % SIZE};
                for (int axis = 0; axis < at.length; axis++) {
                    double z = (box.node(axis, at[axis]) - centre[axis]) / SDS[axis];
                    total[i] -= 0.5 * z * z;
                }
            }
        }

        void add(List<Likelihood> flyers) {
            for (Likelihood flyer : flyers) {
                double[] own = smoother.logs(flyer, box);
                for (int i = 0; i < total.length; i++) {
                    total[i] += own[i];
                }
            }
        }

        /** Whether the grid carries it, or there is no further try; else the grid moves on. */
        boolean settled(boolean last) {
            moments = moments(total, box);
            boolean settled = last || box.fits(moments);
            box = settled ? box : box.next(moments);
            return settled;
        }

        Moments without(Likelihood flyer) {
            double[] own = smoother.logs(flyer, box);
            double[] others = total.clone();
            for (int i = 0; i < others.length; i++) {
                others[i] -= own[i];
            }
            return moments(others, box);
        }
    }

    /** Prior means of M, A and B. */
    private static double[] centre(Priors base) {
        return new double[] {0, FastMath.log(base.scatterMedian()), FastMath.log(base.bandMedian())};
    }

    private static Moments moments(double[] logs, Box box) {
        double highest = Arrays.stream(logs).max().orElseThrow();
        double mass = 0;
        double[] mean = new double[SDS.length];
        double[][] second = new double[SDS.length][SDS.length];
        for (int i = 0; i < logs.length; i++) {
            double weight = FastMath.exp(logs[i] - highest);
            double[] off = {
                box.node(0, i / (SIZE * SIZE)) - box.centre[0],
                box.node(1, i / SIZE % SIZE) - box.centre[1],
                box.node(2, i % SIZE) - box.centre[2]
            };
            mass += weight;
            for (int a = 0; a < off.length; a++) {
                mean[a] += weight * off[a];
                for (int b = 0; b < off.length; b++) {
                    second[a][b] += weight * off[a] * off[b];
                }
            }
        }
        for (int a = 0; a < mean.length; a++) {
            mean[a] /= mass;
        }
        for (int a = 0; a < mean.length; a++) {
            for (int b = 0; b < mean.length; b++) {
                second[a][b] = second[a][b] / mass - mean[a] * mean[b];
            }
        }
        double[] centre = box.centre.clone();
        for (int a = 0; a < mean.length; a++) {
            centre[a] += mean[a];
        }
        return new Moments(highest + FastMath.log(mass) + box.logCell(), centre, second);
    }

    /** What they teach of a flyer who is none of them: normals whose weights add to 1. */
    public List<FlyerPrior.Part> learned() {
        return parts(spreads.stream().map(Spread::moments).toList());
    }

    /** What all the others teach of one of them. */
    public List<FlyerPrior.Part> learnedWithout(int flyer) {
        return parts(List.of(without[flyer]));
    }

    private List<FlyerPrior.Part> parts(List<Moments> given) {
        double highest = given.stream().mapToDouble(Moments::logMass).max().orElseThrow();
        double[] weights = new double[given.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = spreads.get(i).weight() * FastMath.exp(given.get(i).logMass() - highest);
        }
        double sum = Arrays.stream(weights).filter(w -> w > NEGLIGIBLE).sum();
        List<FlyerPrior.Part> parts = new ArrayList<>();
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > NEGLIGIBLE) {
                parts.add(part(weights[i] / sum, spreads.get(i), given.get(i)));
            }
        }
        return parts;
    }

    private static FlyerPrior.Part part(double weight, Spread spread, Moments given) {
        double[][] v = given.covariance;
        double t = spread.mean() * spread.mean();
        double s = spread.log() * spread.log();
        return new FlyerPrior.Part(
                weight,
                given.mean[0],
                given.mean[1],
                given.mean[2],
                new FlyerPrior.Covariance(v[0][0] + t, v[1][1] + s, v[2][2] + s, v[0][1], v[0][2], v[1][2]));
    }

    /** A flyer's likelihood of (M, A, B), given T and S. */
    private record Smoother(double meanSpread, double logSpread) {

        /** Its logarithm on a box, [M][A][B] in one row. */
        double[] logs(Likelihood flyer, Box box) {
            FlyerEvidence.Axes axes = flyer.axes;
            double[][][] likelihood = flyer.values;
            double[][] byMean = weights(axes.mean(), box, 0, meanSpread);
            double[][] byScatter = weights(axes.scatter(), box, 1, logSpread);
            double[][] byBand = weights(axes.band(), box, 2, logSpread);
            int bands = axes.band().size();
            double[] result = new double[SIZE * SIZE * SIZE];
            for (int m = 0; m < SIZE; m++) {
                double[][] smoothed = new double[SIZE][bands];
                for (int i = 0; i < likelihood.length; i++) {
                    for (int j = 0; j < bands; j++) {
                        double value = dot(likelihood[i][j], byMean[m]);
                        for (int a = 0; a < SIZE; a++) {
                            smoothed[a][j] += byScatter[a][i] * value;
                        }
                    }
                }
                for (int a = 0; a < SIZE; a++) {
                    for (int b = 0; b < SIZE; b++) {
                        result[(m * SIZE + a) * SIZE + b] =
                                FastMath.log(Math.max(dot(smoothed[a], byBand[b]), Double.MIN_NORMAL));
                    }
                }
            }
            return result;
        }

        private static double dot(double[] a, double[] b) {
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += a[i] * b[i];
            }
            return sum;
        }

        /** Trapezoidal weights of a normal about each node of the box; beyond the nodes the likelihood is held at its end. */
        private static double[][] weights(List<Double> nodes, Box box, int axis, double sd) {
            double step = nodes.get(1) - nodes.get(0);
            double[][] result = new double[SIZE][nodes.size()];
            for (int n = 0; n < SIZE; n++) {
                double centre = box.node(axis, n);
                for (int i = 0; i < nodes.size(); i++) {
                    double z = (nodes.get(i) - centre) / sd;
                    result[n][i] = step / (sd * FastMath.sqrt(2 * Math.PI)) * FastMath.exp(-0.5 * z * z);
                }
                int last = nodes.size() - 1;
                result[n][0] += FastNormal.cdf((nodes.get(0) - step / 2 - centre) / sd);
                result[n][last] += FastNormal.cdf((centre - nodes.get(last) - step / 2) / sd);
            }
            return result;
        }
    }
}
