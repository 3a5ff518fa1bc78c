package org.sunder.engine.planning;

import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Erf;
import org.sunder.engine.learning.model.Outcome;

/**
 * A joint whose parameters are known, for simulations only.
 *
 * @param handbookCharge kg
 * @param c log correction
 * @param sigma scatter
 * @param delta band of partial separation
 * @param truth how the world differs from the model
 */
record TrueJoint(double handbookCharge, double c, double sigma, double delta, Truth truth) {

    /** How the world differs from what the model assumes. */
    enum Truth {
        AS_ASSUMED("as the model assumes", 0, 0, false),
        LAPSES("one test in twenty lapses", 0, 0.05, false),
        HEAVY_TAILS("scatter by Student's t, 3 degrees of freedom", 0, 0, true),
        HANDBOOK_HIGH("true charges ×0.6 of the assumed", StrictMath.log(0.6), 0, false),
        HANDBOOK_LOW("true charges ×1.6 of the assumed", StrictMath.log(1.6), 0, false);

        final String words;
        final double shift;
        final double lapse;
        final boolean heavy;

        Truth(String words, double shift, double lapse, boolean heavy) {
            this.words = words;
            this.shift = shift;
            this.lapse = lapse;
            this.heavy = heavy;
        }
    }

    private static final double Z99 = 2.3263478740408408;
    private static final TDistribution T3 = new TDistribution(3);
    private static final double T99 = T3.inverseCumulativeProbability(0.99);

    Outcome fire(double charge, Random random) {
        if (truth.lapse > 0 && random.nextDouble() < truth.lapse) {
            return List.of(Outcome.values()).get(random.nextInt(3));
        }
        double noise = random.nextGaussian();
        if (truth.heavy) {
            double chi = 0;
            for (int i = 0; i < 3; i++) {
                double g = random.nextGaussian();
                chi += g * g;
            }
            noise /= StrictMath.sqrt(chi / 3);
        }
        double z = StrictMath.log(charge / handbookCharge) - middle() + sigma * noise;
        return z < 0 ? Outcome.NONE : z < delta ? Outcome.PARTIAL : Outcome.SEPARATED;
    }

    /** Log correction, the handbook's own error included. */
    double middle() {
        return c + truth.shift;
    }

    /** Chance that a charge fails to separate this joint; a lapse is a fault of the test, not of the charge. */
    double failure(double charge) {
        double z = (StrictMath.log(charge / handbookCharge) - middle() - delta) / sigma;
        return truth.heavy ? T3.cumulativeProbability(-z) : 0.5 * Erf.erfc(z / StrictMath.sqrt(2));
    }

    /** The charge that separates this joint 99 times in 100, kg. */
    double charge99() {
        return handbookCharge * StrictMath.exp(middle() + delta + (truth.heavy ? T99 : Z99) * sigma);
    }
}
