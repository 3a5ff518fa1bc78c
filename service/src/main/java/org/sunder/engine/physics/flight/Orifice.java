package org.sunder.engine.physics.flight;

import org.sunder.engine.physics.Solids;

/**
 * Flow of a perfect gas through a small hole from rest, isentropic to the throat and choked beyond the critical ratio (F. M.
 * White, Fluid Mechanics, 8th ed., ch. 9): ṁ = C_d·A·p₀·√(2γ/((γ − 1)·R·T₀)·(r^(2/γ) − r^((γ+1)/γ))), r = p/p₀; choked ṁ =
 * C_d·A·p₀·Γ/√(R·T₀).
 *
 * @param area area of all holes, m²
 * @param discharge discharge coefficient C_d
 */
public record Orifice(double area, double discharge) {

    /** Discharge coefficient of a sharp-edged hole: within the range of ISO 5167-2. */
    public static final double SHARP_EDGED = 0.6;

    /** Ratio of specific heats of air. */
    public static final double AIR_GAMMA = 1.4;

    /** Of equal round holes, sharp-edged; diameter in metres. */
    public static Orifice ofHoles(int count, double diameter) {
        return new Orifice(count * Solids.disc(diameter), SHARP_EDGED);
    }

    /** Γ = √γ·(2/(γ + 1))^((γ + 1)/(2(γ − 1))). */
    public static double chokedFactor(double gamma) {
        return Math.sqrt(gamma) * StrictMath.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
    }

    /** Pressure ratio p/p₀ at and below which the flow is choked. */
    public static double criticalRatio(double gamma) {
        return StrictMath.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * Mass flow in kg/s of air from upstream pressure (Pa) and temperature (K) to a back pressure (Pa) no higher than it.
     */
    public double airFlow(double upstream, double temperature, double back) {
        double gamma = AIR_GAMMA;
        double scale = discharge * area * upstream / Math.sqrt(StandardAtmosphere.GAS_CONSTANT * temperature);
        double ratio = back / upstream;
        if (ratio <= criticalRatio(gamma)) {
            return scale * chokedFactor(gamma);
        }
        double first = StrictMath.pow(ratio, 2 / gamma);
        // 1 − r^((γ−1)/γ) without cancellation, for the small differences of a vent.
        double rest = -StrictMath.expm1((gamma - 1) / gamma * StrictMath.log(ratio));
        return scale * Math.sqrt(Math.max(0, 2 * gamma / (gamma - 1) * first * rest));
    }
}
