package org.sunder.engine.learning.model;

/**
 * A measured speed of separation: ln v_obs ~ N(ln v(x − c) + b, 0.10²), with a bias b ~ N(0, 0.15²) of the physics
 * that the whole fleet shares.
 *
 * @param logSpeed ln of the measured speed in m/s
 * @param predicted what the physics predicts
 */
public record SpeedReading(double logSpeed, SpeedCurve predicted) {

    /** Standard deviation of a reading, in ln; the project's own choice. */
    public static final double READING_SD = 0.10;
    /** Standard deviation of the shared bias, in ln; the project's own choice. */
    public static final double BIAS_SD = 0.15;
    /** Density, per ln, of the speed of a lapsed trial: flat over a factor of e⁶. */
    public static final double LAPSED = 1.0 / 6;

    public SpeedReading {
        if (!Double.isFinite(logSpeed)) {
            throw new IllegalArgumentException("a measured speed must be positive and finite");
        }
    }
}
