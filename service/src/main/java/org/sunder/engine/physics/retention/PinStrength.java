package org.sunder.engine.physics.retention;

import org.hipparchus.distribution.continuous.TDistribution;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Pressure;

/** How strong one pin is in single shear, and how well that is known. */
public sealed interface PinStrength {

    /** Expected force in newtons that one pin of that thread breaks at. */
    double forceOfOne(PinThread thread);

    /**
     * How many standard deviations of one pin lie between the mean and the force that 95 of 100 next pins exceed: the one-sided
     * quantile of the prediction.
     */
    double oneSided95();

    /** Standard deviation in newtons of the sum of {@code count} pins. */
    double sdOf(int count, PinThread thread);

    /**
     * Strength of the material on the root area of the thread. Its uncertainty is that of the material, one and the same for
     * all pins, so it does not average out.
     *
     * @param strength shear strength τ
     * @param relativeUncertainty relative standard deviation of τ
     */
    record MaterialShear(Pressure strength, double relativeUncertainty) implements PinStrength {

        /**
         * Nylon 6/6: 69 MPa (10 000 psi, ASTM D732 data for extruded PA 6/6 at 23 °C). Uncertainty 10 %, this project's
         * choice: handbooks span 65 to 72 MPa and heat and moisture lower it.
         */
        public static final MaterialShear NYLON_66 = new MaterialShear(Pressure.ofPascals(69e6), 0.10);

        @Override
        public double forceOfOne(PinThread thread) {
            return strength.pascals() * thread.rootArea();
        }

        @Override
        public double sdOf(int count, PinThread thread) {
            return count * forceOfOne(thread) * relativeUncertainty;
        }

        /** The standard normal quantile. */
        @Override
        public double oneSided95() {
            return 1.6448536269514722;
        }
    }

    /**
     * Pull tests of an own batch. The scatter of n pins grows as √n; the uncertainty of the batch mean is common to all.
     *
     * @param mean sample mean of the break force of one pin
     * @param standardDeviation sample standard deviation of one pin
     * @param tests how many pins were broken, at least 2
     */
    record MeasuredBatch(Force mean, Force standardDeviation, int tests) implements PinStrength {

        @Override
        public double forceOfOne(PinThread thread) {
            return mean.newtons();
        }

        /**
         * Student's t with tests − 1 degrees of freedom: a next pull lies below mean − t·s·√(1 + 1/n) once in 20 (G. J. Hahn,
         * W. Q. Meeker, Statistical Intervals, 1991, ch. 4: prediction interval of one future observation).
         */
        @Override
        public double oneSided95() {
            return new TDistribution(tests - 1).inverseCumulativeProbability(0.95);
        }

        @Override
        public double sdOf(int count, PinThread thread) {
            double one = standardDeviation.newtons();
            return one * Math.sqrt(count + (double) count * count / tests);
        }
    }
}
