package org.sunder.engine.learning.model;

import java.util.List;

/**
 * What the physics predicts for the speed of separation: ln v against x − c, the log ratio by which a charge exceeds
 * what the joint's threshold pressure needs. Linear between its points and constant beyond them.
 *
 * @param low x − c of the first point
 * @param step distance of two points, positive
 * @param logSpeeds ln of the speed in m/s at each point, two or more, finite
 */
public record SpeedCurve(double low, double step, List<Double> logSpeeds) {

    public SpeedCurve {
        logSpeeds = List.copyOf(logSpeeds);
        if (!(step > 0) || logSpeeds.size() < 2 || logSpeeds.stream().anyMatch(v -> !Double.isFinite(v))) {
            throw new IllegalArgumentException("a speed curve has a positive step and two finite points or more");
        }
    }

    /** ln v at x − c. */
    public double logSpeed(double excess) {
        double position = Math.min(Math.max((excess - low) / step, 0), logSpeeds.size() - 1.0);
        int i = Math.min((int) position, logSpeeds.size() - 2);
        return logSpeeds.get(i) + (position - i) * (logSpeeds.get(i + 1) - logSpeeds.get(i));
    }
}
