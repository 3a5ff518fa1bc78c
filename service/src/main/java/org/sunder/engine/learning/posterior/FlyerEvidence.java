package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Node;

/**
 * What one flyer's log says of that flyer's mean log correction μ, scatter σ and band δ: the log likelihood at the nodes of the
 * standard design, all between-level spreads τ and the bias of speeds summed out by their priors, which stay each flyer's own.
 * Immutable.
 */
public final class FlyerEvidence {

    private final Axes axes;
    /** Log likelihood against its largest, [σ][δ][μ]. */
    private final float[][][] logs;

    private FlyerEvidence(Axes axes, float[][][] logs) {
        this.axes = axes;
        this.logs = logs;
    }

    /** Nodes of ln σ, ln δ and μ, each evenly spaced. */
    record Axes(List<Double> scatter, List<Double> band, List<Double> mean) {

        Axes {
            scatter = List.copyOf(scatter);
            band = List.copyOf(band);
            mean = List.copyOf(mean);
        }
    }

    /**
     * The evidence of a flyer's log.
     *
     * @param priors of the spreads and the lapse, with scatter and band not known beforehand
     */
    public static FlyerEvidence of(FleetLog log, Priors priors) {
        Design design = Design.standard(priors, log);
        Hierarchy levels = new Hierarchy(priors, design, BiasNodes.kept(log));
        MeanLogLikelihood sums = MeanLogLikelihood.of(log.airframes(), levels);
        int bands = design.band().size();
        double[][][] logs = new double[design.scatter().size()][bands][];
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            for (int j = 0; j < bands; j++) {
                double prior = FastMath.log(
                        design.scatter().get(i).weight() * design.band().get(j).weight());
                logs[i][j] = summed(levels, sums, (i * bands + j) * levels.biases(), prior);
                for (double each : logs[i][j]) {
                    largest = Math.max(largest, each);
                }
            }
        }
        float[][][] kept = new float[logs.length][bands][design.knots()];
        for (int i = 0; i < logs.length; i++) {
            for (int j = 0; j < bands; j++) {
                for (int k = 0; k < design.knots(); k++) {
                    kept[i][j][k] = (float) (logs[i][j][k] - largest);
                }
            }
        }
        return new FlyerEvidence(axes(design, priors), kept);
    }

    private static Axes axes(Design design, Priors priors) {
        return new Axes(
                halved(around(design.scatter(), FastMath.log(priors.scatterMedian()), priors.scatterLogSd())),
                halved(around(design.band(), FastMath.log(priors.bandMedian()), priors.bandLogSd())),
                IntStream.range(0, design.knots())
                        .mapToObj(k -> (k - design.knotHalf())
                                * design.knotStride()
                                * design.corrections().step())
                        .toList());
    }

    private static List<Double> around(List<Node> scores, double centre, double sd) {
        return scores.stream().map(node -> centre + sd * node.value()).toList();
    }

    /** At the knots of μ: log of the sum over the bias of speeds and the spreads, by their prior weights. */
    private static double[] summed(Hierarchy levels, MeanLogLikelihood sums, int firstProbit, double logNodeWeight) {
        int knots = levels.design().knots();
        int cells = levels.biases() * levels.design().spreads();
        int first = firstProbit * levels.design().spreads();
        double[][] terms = new double[cells][];
        double[] highest = new double[knots];
        Arrays.fill(highest, Double.NEGATIVE_INFINITY);
        for (int cell = 0; cell < cells; cell++) {
            terms[cell] = sums.at(first + cell);
            double weight = levels.logWeight(first + cell) - logNodeWeight;
            for (int k = 0; k < knots; k++) {
                terms[cell][k] += weight;
                highest[k] = Math.max(highest[k], terms[cell][k]);
            }
        }
        double[] result = new double[knots];
        for (int k = 0; k < knots; k++) {
            double sum = 0;
            for (double[] term : terms) {
                sum += FastMath.exp(term[k] - highest[k]);
            }
            result[k] = highest[k] + FastMath.log(sum);
        }
        return result;
    }

    Axes axes() {
        return axes;
    }

    private static List<Double> halved(List<Double> nodes) {
        List<Double> result = new ArrayList<>();
        for (int i = 0; i < nodes.size() - 1; i++) {
            result.add(nodes.get(i));
            result.add((nodes.get(i) + nodes.get(i + 1)) / 2);
        }
        result.add(nodes.get(nodes.size() - 1));
        return result;
    }

    /**
     * Likelihood against its largest at {@link #axes()}, [σ][δ][μ]: half way between the design's nodes of σ and δ its logarithm is
     * interpolated by a cubic, since a normal as narrow as half their distance is to be summed over them.
     */
    double[][][] likelihood() {
        int scatters = 2 * logs.length - 1;
        int bands = 2 * logs[0].length - 1;
        double[][][] fine = new double[scatters][bands][];
        for (int i = 0; i < logs.length; i++) {
            for (int j = 0; j < logs[i].length; j++) {
                fine[2 * i][2 * j] = doubles(logs[i][j]);
            }
            for (int j = 1; j < bands; j += 2) {
                int row = 2 * i;
                fine[row][j] = middle(j, bands, other -> fine[row][other]);
            }
        }
        for (int i = 1; i < scatters; i += 2) {
            for (int j = 0; j < bands; j++) {
                int column = j;
                fine[i][j] = middle(i, scatters, other -> fine[other][column]);
            }
        }
        for (double[][] row : fine) {
            for (double[] values : row) {
                for (int k = 0; k < values.length; k++) {
                    values[k] = FastMath.exp(values[k]);
                }
            }
        }
        return fine;
    }

    private static double[] middle(int at, int size, IntFunction<double[]> known) {
        double[] before = known.apply(at - 1);
        double[] after = known.apply(at + 1);
        double[] result = new double[before.length];
        boolean inside = at >= 3 && at + 3 < size;
        double[] first = inside ? known.apply(at - 3) : before;
        double[] last = inside ? known.apply(at + 3) : after;
        for (int k = 0; k < result.length; k++) {
            result[k] = inside
                    ? GaussianKernel.midpoint(first[k], before[k], after[k], last[k])
                    : (before[k] + after[k]) / 2;
        }
        return result;
    }

    private static double[] doubles(float[] values) {
        double[] result = new double[values.length];
        for (int k = 0; k < values.length; k++) {
            result[k] = values[k];
        }
        return result;
    }
}
