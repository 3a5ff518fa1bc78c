package org.sunder.engine.learning.posterior;

import java.util.List;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.quadrature.Grid;
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * Where the posterior is evaluated: the nodes of the hyperparameters in units of their priors, and the grids of the
 * correction c and of the fleet's mean μ.
 *
 * @param scatter scores of ln σ
 * @param band scores of ln δ
 * @param airframe τₐ in units of its scale
 * @param joint τⱼ in units of its scale
 * @param setup τₛ in units of its scale
 * @param corrections grid of c
 * @param knotStride knots of μ lie on every {@code knotStride}-th node of c
 * @param knotHalf knots of μ on either side of 0
 */
record Design(
        List<Node> scatter,
        List<Node> band,
        List<Node> airframe,
        List<Node> joint,
        List<Node> setup,
        Grid corrections,
        int knotStride,
        int knotHalf) {

    /** Step of c; a product of Gaussians as narrow as 0.03 is still summed to 1e-6. */
    private static final double STEP = 0.025;
    /** Nodes of c on either side of 0: |c| up to 2.4, a factor of 11. */
    private static final int HALF = 96;

    Design {
        if ((corrections.size() - 1) / 2 % knotStride != 0) {
            throw new IllegalArgumentException("knots of the mean must lie on nodes that halving keeps");
        }
    }

    /**
     * The design of the engine's answers for given priors and a log: the coarsest of those tried that keeps quantiles of
     * the reference cases within 0.002 (0.0035 at the ends), chances within 0.002, and quantiles of ten fleets of several
     * joints and setups within 0.003 (twice that at the ends). Where the log has no two tested joints of an airframe, or
     * no two tested setups of a joint, it says next to nothing of τⱼ or τₛ, and few nodes do.
     */
    static Design standard(Priors priors, FleetLog log) {
        boolean joints = log.airframes().stream().anyMatch(AirframeLog::comparesJoints);
        boolean setups = log.airframes().stream().anyMatch(AirframeLog::comparesSetups);
        return new Design(
                priors.scatterLogSd() == 0 ? QuadratureRules.known() : QuadratureRules.normal(0.6, 6),
                priors.bandLogSd() == 0 ? QuadratureRules.known() : QuadratureRules.normal(0.7, 4),
                priors.airframeScale() == 0 ? QuadratureRules.known() : QuadratureRules.halfNormal(11, 3.8),
                priors.jointScale() == 0
                        ? QuadratureRules.known()
                        : joints ? QuadratureRules.halfNormalGauss4() : QuadratureRules.halfNormalGauss3(),
                priors.setupScale() == 0
                        ? QuadratureRules.known()
                        : setups ? QuadratureRules.halfNormalGauss4() : QuadratureRules.halfNormalGauss2(),
                Grid.symmetric(STEP, HALF),
                2,
                (int) Math.ceil(4.2 * priors.meanSd() / (2 * STEP)));
    }

    int knots() {
        return 2 * knotHalf + 1;
    }

    /** Index in the grid of c of the first knot of μ. */
    int firstKnot() {
        return (corrections.size() - 1) / 2 - knotHalf * knotStride;
    }

    /** Index in the grid of c of the last knot of μ. */
    int lastKnot() {
        return firstKnot() + (knots() - 1) * knotStride;
    }

    /** Number of combinations of the three between-level standard deviations. */
    int spreads() {
        return airframe.size() * joint.size() * setup.size();
    }
}
