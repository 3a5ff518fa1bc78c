package org.sunder.engine.physics.charge;

/**
 * Relative standard deviation of the handbook charge, by where it comes from.
 *
 * @param pins from the strength of the pins
 * @param fit from the friction of the fit
 * @param volume from the free volume
 * @param powder from the powder force
 */
public record LogUncertainty(double pins, double fit, double volume, double powder) {

    /** Root-sum-square of the parts: the input uncertainty s_x of the setup. */
    public double total() {
        return Math.sqrt(pins * pins + fit * fit + volume * volume + powder * powder);
    }
}
