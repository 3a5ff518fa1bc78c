package org.sunder.engine.physics.charge;

/**
 * Speed at which the two parts of a joint leave each other.
 *
 * <p>After the pins have sheared the gas expands adiabatically behind the moving part over the stroke s of the shoulder, from
 * p₀ = p_i + mλ/V (p_i the pressure inside before firing, p_a that outside): W = p₀V/(γ − 1)·[1 − (V/(V + A·s))^(γ − 1)] − p_a·A·s − F_fit·s, relative speed v = √(2W/m_r) with the
 * reduced mass m_r. All charge is taken as burnt before motion, walls as adiabatic: an upper figure. All SI.
 *
 * @param freeVolume V, m³
 * @param area A, m²
 * @param stroke s, m
 * @param fitForce friction over the stroke, N
 * @param reducedMass m_r = m₁m₂/(m₁ + m₂), kg
 * @param powderForce λ, J/kg
 * @param outsidePressure p_a, Pa
 * @param insidePressure p_i, Pa; on the ground and in a vented compartment that outside
 */
public record Separation(
        double freeVolume,
        double area,
        double stroke,
        double fitForce,
        double reducedMass,
        double powderForce,
        double outsidePressure,
        double insidePressure) {

    /** Ratio of specific heats of the powder gas, this project's choice; handbooks give about 1.25 before cooling. */
    static final double GAMMA = 1.2;

    /** Relative speed in m/s for a charge in kg; zero where the work does not overcome air and friction. */
    public double speed(double charge) {
        double start = insidePressure + charge * powderForce / freeVolume;
        double work = start * workPerPressure() - resistance();
        return work <= 0 ? 0 : Math.sqrt(2 * work / reducedMass);
    }

    /** The charge in kg that gives a speed in m/s: the equation is linear in the charge. */
    double charge(double speed) {
        double start = (reducedMass * speed * speed / 2 + resistance()) / workPerPressure();
        return Math.max(0, start - insidePressure) * freeVolume / powderForce;
    }

    private double workPerPressure() {
        double ratio = freeVolume / (freeVolume + area * stroke);
        return freeVolume / (GAMMA - 1) * (1 - StrictMath.pow(ratio, GAMMA - 1));
    }

    private double resistance() {
        return (outsidePressure * area + fitForce) * stroke;
    }
}
