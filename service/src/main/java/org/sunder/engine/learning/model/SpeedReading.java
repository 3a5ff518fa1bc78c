package org.sunder.engine.learning.model;

/**
 * A measured speed of separation: ln v_obs ~ N(ln v(x − c) + b, sd²), with a bias b ~ N(0, 0.15²) of the physics that the
 * whole fleet shares.
 *
 * @param logSpeed ln of the measured speed in m/s
 * @param sd standard deviation of the reading, in ln; {@link #LEAST_SD} to {@link #LARGEST_SD}
 * @param predicted what the physics predicts
 */
public record SpeedReading(double logSpeed, double sd, SpeedCurve predicted) {

    /** Standard deviation of a reading that comes without its own, in ln; the project's own choice. */
    public static final double USUAL_SD = 0.10;
    /** The finest reading that is believed, in ln: scale and rate of a film are hardly known better; own choice. */
    public static final double LEAST_SD = 0.03;
    /** The coarsest reading that is taken, in ln: beyond it nothing is learned; own choice. */
    public static final double LARGEST_SD = 0.50;
    /** Standard deviation of the shared bias, in ln; the project's own choice. */
    public static final double BIAS_SD = 0.15;
    /** Density, per ln, of the speed of a lapsed trial: flat over a factor of e⁶. */
    public static final double LAPSED = 1.0 / 6;

    public SpeedReading {
        if (!Double.isFinite(logSpeed)) {
            throw new IllegalArgumentException("a measured speed must be positive and finite");
        }
        requireSd(sd);
    }

    /** A reading that comes without a standard deviation of its own. */
    public SpeedReading(double logSpeed, SpeedCurve predicted) {
        this(logSpeed, USUAL_SD, predicted);
    }

    static void requireSd(double sd) {
        if (!(sd >= LEAST_SD && sd <= LARGEST_SD)) {
            throw new IllegalArgumentException("the standard deviation of ln speed must lie between " + LEAST_SD
                    + " and " + LARGEST_SD + ", not " + sd);
        }
    }

    /** What it tells, per squared ln: 1/sd². */
    public double precision() {
        return 1 / (sd * sd);
    }
}
