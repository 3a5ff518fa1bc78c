package org.sunder.engine.planning;

import java.util.Random;
import org.sunder.engine.learning.model.Priors;

/** A flyer whose fleet's parameters are drawn from the priors and known, for simulations only. */
final class TrueFleet {

    static final double INPUT_SD = 0.05;
    /** Handbook charges met, kg: 0.5 to 3 g in eight equal ratios. */
    static final int CLASSES = 8;

    private final double mean;
    private final double airframeSd;
    private final double setupSd;
    final double sigma;
    final double delta;
    /** Bias of measured speeds, in ln. */
    final double bias;

    TrueFleet(Priors priors, Random random) {
        mean = priors.meanSd() * random.nextGaussian();
        double ta = priors.airframeScale() * random.nextGaussian();
        double tj = priors.jointScale() * random.nextGaussian();
        airframeSd = StrictMath.hypot(ta, tj);
        setupSd = StrictMath.hypot(priors.setupScale() * random.nextGaussian(), INPUT_SD);
        sigma = priors.scatterMedian() * StrictMath.exp(priors.scatterLogSd() * random.nextGaussian());
        delta = priors.bandMedian() * StrictMath.exp(priors.bandLogSd() * random.nextGaussian());
        bias = 0.15 * random.nextGaussian();
    }

    static double handbookCharge(int which) {
        return 0.0005 * StrictMath.pow(6, which / (CLASSES - 1.0));
    }

    /** A joint's own mean correction, of a further airframe. */
    double joint(Random random) {
        return mean + airframeSd * random.nextGaussian();
    }

    /** A setup of a joint with that mean correction. */
    TrueJoint setup(double joint, int which, TrueJoint.Truth truth, Random random) {
        return new TrueJoint(handbookCharge(which), joint + setupSd * random.nextGaussian(), sigma, delta, truth);
    }
}
