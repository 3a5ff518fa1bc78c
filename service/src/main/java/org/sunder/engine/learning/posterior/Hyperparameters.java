package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Node;

/**
 * What a fleet's log says of the quantities that its joints share: the mean correction μ, the scatter σ, the band δ and
 * the spreads τ between airframes, joints and setups. Quantiles in log charge ratio, dimensionless.
 *
 * <p>Method: the marginal likelihood of each node of the design, interpolated between nodes, times the prior (see {@link
 * Marginal}); μ from its mass on the grid. The spreads between joints and setups rest on four nodes each, so their
 * quantiles are coarse, within about 0.02.
 */
public final class Hyperparameters {

    /** ln 1e-9: combinations whose density at its peak is further below the best are left out. */
    private static final double NEGLIGIBLE = -20.7;

    private final Priors priors;
    private final CorrectionMass mean;
    private final Marginal scatter;
    private final Marginal band;
    private final Marginal airframe;
    private final Marginal joint;
    private final Marginal setup;

    Hyperparameters(Hierarchy levels, MeanLogLikelihood evidence) {
        Design design = levels.design();
        this.priors = levels.priors();
        double[] peaks = evidence.peaks(levels);
        double best = Arrays.stream(peaks).max().orElseThrow();
        double[] cells = new double[peaks.length];
        double[] mass = new double[levels.nodes()];
        GaussianKernel none = GaussianKernel.of(0, design.corrections());
        for (int cell = 0; cell < cells.length; cell++) {
            if (peaks[cell] - best > NEGLIGIBLE) {
                MeanPosterior posterior = MeanLogLikelihood.mean(levels, cell, evidence.at(cell));
                double[] density = posterior.airframe(none, 0);
                double scale = FastMath.exp(peaks[cell] - best);
                for (int i = 0; i < mass.length; i++) {
                    mass[i] += scale * density[i];
                    cells[cell] += scale * density[i];
                }
            }
        }
        CorrectionMass unscaled = new CorrectionMass(levels.probits().get(0), design.corrections(), mass);
        this.mean = unscaled.scaled(1 / unscaled.mass());
        int perBand = levels.biases() * design.spreads();
        int perScatter = perBand * design.band().size();
        int perSetup = design.joint().size() * design.airframe().size();
        this.scatter = Marginal.ofNormal(design.scatter(), sums(cells, design.scatter(), cell -> cell / perScatter));
        this.band = Marginal.ofNormal(design.band(), sums(cells, design.band(), cell -> cell % perScatter / perBand));
        this.setup = Marginal.ofHalfNormal(
                design.setup(), sums(cells, design.setup(), cell -> cell % design.spreads() / perSetup));
        this.joint = Marginal.ofHalfNormal(
                design.joint(),
                sums(
                        cells,
                        design.joint(),
                        cell -> cell % perSetup / design.airframe().size()));
        this.airframe = Marginal.ofHalfNormal(
                design.airframe(),
                sums(cells, design.airframe(), cell -> cell % design.airframe().size()));
    }

    private static double[] sums(double[] cells, List<Node> nodes, IntUnaryOperator node) {
        double[] result = new double[nodes.size()];
        IntStream.range(0, cells.length).forEach(cell -> result[node.applyAsInt(cell)] += cells[cell]);
        return result;
    }

    /** Quantile of the fleet's mean log correction μ; p in (0, 1). */
    public double mean(double p) {
        return RisingRoot.ofRising(c -> mean.below(c) - p);
    }

    /** Quantile of the shot-to-shot scatter σ; p in (0, 1). */
    public double scatter(double p) {
        return priors.scatterMedian() * FastMath.exp(priors.scatterLogSd() * scatter.quantile(p));
    }

    /** Quantile of the width δ of the band of partial separation; p in (0, 1). */
    public double band(double p) {
        return priors.bandMedian() * FastMath.exp(priors.bandLogSd() * band.quantile(p));
    }

    /** Quantile of the spread τₐ between airframes; p in (0, 1). */
    public double airframeSpread(double p) {
        return priors.airframeScale() * airframe.quantile(p);
    }

    /** Quantile of the spread τⱼ between the joints of an airframe; p in (0, 1). */
    public double jointSpread(double p) {
        return priors.jointScale() * joint.quantile(p);
    }

    /** Quantile of the spread τₛ between the setups of a joint; p in (0, 1). */
    public double setupSpread(double p) {
        return priors.setupScale() * setup.quantile(p);
    }
}
