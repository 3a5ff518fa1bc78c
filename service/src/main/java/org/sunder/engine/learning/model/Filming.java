package org.sunder.engine.learning.model;

/**
 * Firings are filmed: each that separates is going to tell how fast its parts left.
 *
 * @param sd standard deviation of such a reading, in ln; {@link SpeedReading#LEAST_SD} to {@link SpeedReading#LARGEST_SD}
 * @param predicted what the physics predicts
 */
public record Filming(double sd, SpeedCurve predicted) {

    public Filming {
        SpeedReading.requireSd(sd);
    }

    /** The reading that a film gives, in ln of m/s. */
    public SpeedReading reading(double logSpeed) {
        return new SpeedReading(logSpeed, sd, predicted);
    }
}
