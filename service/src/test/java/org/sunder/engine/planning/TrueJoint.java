package org.sunder.engine.planning;

import java.util.Random;
import org.hipparchus.special.Erf;
import org.sunder.engine.learning.Outcome;

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
