package org.sunder.engine.planning;

/**
 * What a plan aims at.
 *
 * @param reliability chance of separating that the flight charge must have, in (0.5, 1)
 * @param pricePerTest what one more test is worth, in ln of the flight charge
 * @param excessLimit largest ln of the flight charge over the median of the joint's own, for want of knowledge, at
 *     which testing may stop
 */
public record Goal(double reliability, double pricePerTest, double excessLimit) {

    public Goal {
        if (!(reliability > 0.5 && reliability < 1) || !(pricePerTest >= 0) || !(excessLimit > 0)) {
            throw new IllegalArgumentException("reliability in (0.5, 1), price 0 or more, excess limit above 0");
        }
    }

    /** Reliability 0.99 and an excess of at most ×1.20; the price per test is the project's own choice. */
    public static Goal standard() {
        return new Goal(0.99, 0.10, StrictMath.log(1.20));
    }
}
