package org.sunder.engine.planning;

import java.util.Random;
import org.hipparchus.special.Erf;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Priors;

/**
 * A joint whose parameters are known, for simulations only.
 *
 * @param handbookCharge kg
 * @param c log correction
 * @param sigma scatter
 * @param delta band of partial separation
 */
record TrueJoint(double handbookCharge, double c, double sigma, double delta) {

    /** Normal quantile of 0.99. */
    private static final double Z99 = 2.3263478740408408;

    /** A joint of an untested airframe, drawn from the priors; handbook charge log-uniform from 0.5 to 3 g. */
    static TrueJoint draw(Priors priors, double inputSd, Random random) {
        double ta = Math.abs(priors.airframeScale() * random.nextGaussian());
        double tj = Math.abs(priors.jointScale() * random.nextGaussian());
        double ts = Math.abs(priors.setupScale() * random.nextGaussian());
        double c = priors.meanSd() * random.nextGaussian()
                + ta * random.nextGaussian()
                + tj * random.nextGaussian()
                + StrictMath.hypot(ts, inputSd) * random.nextGaussian();
        double sigma = priors.scatterMedian() * StrictMath.exp(priors.scatterLogSd() * random.nextGaussian());
        double delta = priors.bandMedian() * StrictMath.exp(priors.bandLogSd() * random.nextGaussian());
        return new TrueJoint(0.0005 * StrictMath.exp(StrictMath.log(6) * random.nextDouble()), c, sigma, delta);
    }

    Outcome fire(double charge, Random random) {
        double z = StrictMath.log(charge / handbookCharge) - c + sigma * random.nextGaussian();
        return z < 0 ? Outcome.NONE : z < delta ? Outcome.PARTIAL : Outcome.SEPARATED;
    }

    /** Chance that a charge fails to separate this joint. */
    double failure(double charge) {
        double z = (StrictMath.log(charge / handbookCharge) - c - delta) / sigma;
        return 0.5 * Erf.erfc(z / StrictMath.sqrt(2));
    }

    /** The charge that separates this joint 99 times in 100, kg. */
    double charge99() {
        return handbookCharge * StrictMath.exp(c + delta + Z99 * sigma);
    }
}
