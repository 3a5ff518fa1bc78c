package org.sunder.engine.planning;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Ways to bring a joint's target charge within its limits by changing the setup. The handbook charge is m = F·V /
 * (λ·A): retention F, free volume V, area A.
 *
 * @param retention retention F that would do with all else as it is, N
 * @param pins most pins that would do, empty if even none does or there are none to take out
 * @param volume free volume that would do, m³; empty where the limit is a pressure, which less volume does not lower
 * @param area area that would do, m²
 */
public record SetupOptions(double retention, OptionalInt pins, OptionalDouble volume, double area) {

    /**
     * A setup as it is.
     *
     * @param pins number of shear pins
     * @param pinStrength strength of one pin, N
     * @param fitForce retention by the fit, N
     * @param volume free volume, m³
     * @param area area at the joint, m²
     * @param limitedByPressure whether the highest charge comes from a limit on the gauge pressure
     */
    public record Setup(
            int pins, double pinStrength, double fitForce, double volume, double area, boolean limitedByPressure) {}

    /**
     * The options for a setup.
     *
     * @param scale factor on the handbook charge, or under a pressure limit on the threshold pressure, at which the
     *     target is met, as {@link NextStep.ChangeSetup#requiredScale()} states it; in (0, 1]
     */
    public static SetupOptions of(Setup setup, double scale) {
        if (!(scale > 0 && scale <= 1)) {
            throw new IllegalArgumentException("the required scale is above 0 and at most 1, not " + scale);
        }
        double retention = scale * (setup.pins() * setup.pinStrength() + setup.fitForce());
        double left = retention - setup.fitForce();
        int pins = setup.pinStrength() > 0 ? (int) Math.floor(left / setup.pinStrength() * (1 + 1e-12)) : 0;
        boolean useful = left >= 0 && setup.pins() > 0 && pins < setup.pins();
        return new SetupOptions(
                retention,
                useful ? OptionalInt.of(pins) : OptionalInt.empty(),
                setup.limitedByPressure() ? OptionalDouble.empty() : OptionalDouble.of(scale * setup.volume()),
                setup.area() / scale);
    }
}
