package org.sunder.engine.learning.posterior;

import java.util.Collections;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.quadrature.GaussianKernel;
import org.sunder.engine.learning.quadrature.Node;

/**
 * The priors, the design and what follows from them for every fleet: the nodes of (σ, δ) and the kernel between
 * the levels of the tree.
 */
final class Hierarchy {

    private final Priors priors;
    private final Design design;
    private final List<ProbitNode> probits;
    private final List<GaussianKernel> airframe;
    private final List<GaussianKernel> joint;
    private final double[] logWeights;
    private final List<MeanPrior> means;

    /**
     * @param biases nodes of the bias of measured speeds in units of its standard deviation; none where no speed was measured
     */
    Hierarchy(Priors priors, Design design, List<Node> biases) {
        this.priors = priors;
        this.design = design;
        this.probits = biases.isEmpty()
                ? ProbitNode.withoutSpeeds(design, priors)
                : ProbitNode.withSpeeds(design, priors, biases);
        this.airframe = design.airframe().stream()
                .map(node -> kernel(priors.airframeScale() * node.value()))
                .toList();
        this.joint = design.joint().stream()
                .map(node -> kernel(priors.jointScale() * node.value()))
                .toList();
        this.logWeights = weights();
        this.means = means();
    }

    private GaussianKernel kernel(double sd) {
        return GaussianKernel.of(sd, design.corrections());
    }

    Priors priors() {
        return priors;
    }

    Design design() {
        return design;
    }

    List<ProbitNode> probits() {
        return probits;
    }

    int nodes() {
        return design.corrections().size();
    }

    GaussianKernel airframe(int a) {
        return airframe.get(a);
    }

    /** How many nodes of the speeds' bias share a node of (σ, δ); their probits follow one another. */
    int biases() {
        return probits.size() / (design.scatter().size() * design.band().size());
    }

    double airframeSd(int a) {
        return priors.airframeScale() * design.airframe().get(a).value();
    }

    double jointSd(int j) {
        return priors.jointScale() * design.joint().get(j).value();
    }

    GaussianKernel joint(int j) {
        return joint.get(j);
    }

    /** GaussianKernel from a setup to its joint: τₛ and the setup's own input uncertainty add in squares. */
    GaussianKernel setup(int s, double inputSd) {
        return kernel(setupSd(s, inputSd));
    }

    double setupSd(int s, double inputSd) {
        return FastMath.hypot(priors.setupScale() * design.setup().get(s).value(), inputSd);
    }

    /** Number of one combination of (σ, δ), τₛ, τⱼ and τₐ. */
    int cell(int r, int s, int j, int a) {
        return ((r * design.setup().size() + s) * design.joint().size() + j)
                        * design.airframe().size()
                + a;
    }

    /** Log prior weight of one combination of hyperparameters. */
    double logWeight(int cell) {
        return logWeights[cell];
    }

    /** Prior of the fleet's mean where the probit of number r holds. */
    MeanPrior mean(int r) {
        return means.get(r);
    }

    private double[] weights() {
        double[] result = new double[probits.size() * design.spreads()];
        int cell = 0;
        for (ProbitNode probit : probits) {
            for (Node s : design.setup()) {
                for (Node j : design.joint()) {
                    for (Node a : design.airframe()) {
                        result[cell++] = FastMath.log(probit.weight() * s.weight() * j.weight() * a.weight());
                    }
                }
            }
        }
        return result;
    }

    private List<MeanPrior> means() {
        if (priors.flyer().isEmpty()) {
            return Collections.nCopies(probits.size(), new MeanPrior.Normal(priors.meanSd(), design));
        }
        FlyerPrior learned = priors.flyer().get();
        return probits.stream()
                .<MeanPrior>map(probit -> new MeanPrior.Learned(learned, priors, probit, design))
                .toList();
    }
}
