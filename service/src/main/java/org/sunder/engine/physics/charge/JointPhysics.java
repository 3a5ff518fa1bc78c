package org.sunder.engine.physics.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.Solids;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.physics.retention.Retention;

/**
 * What a setup is in physics and what the textbook formula asks for: threshold p* = F/A, handbook charge m_h = p*·V/λ.
 *
 * <p>Assumptions: the charge burns completely and at once, the gas is ideal (co-volume 0.03 % at these loadings), no heat is
 * lost; what that misses is the joint's correction, learned from tests. Valid for V ≤ 0.2 m³, charges to 50 g and p* ≤ 1 MPa.
 *
 * @param setup what was computed
 * @param volume how the free volume comes about
 * @param area area A the pressure acts on, m²
 * @param retention what keeps the joint closed
 * @param thresholdPressure p*, gauge, Pa
 * @param handbookCharge m_h, kg
 * @param uncertainty relative standard deviation of m_h and its parts
 * @param ceiling the charge never to be exceeded
 * @param warnings what a person should know
 */
public record JointPhysics(
        JointSetup setup,
        FreeVolume volume,
        double area,
        Retention retention,
        double thresholdPressure,
        double handbookCharge,
        LogUncertainty uncertainty,
        Ceiling ceiling,
        List<Warning> warnings) {

    /** Copies the list. */
    public JointPhysics {
        warnings = List.copyOf(warnings);
    }

    /**
     * The physics of a setup.
     *
     * @throws UnsoundSetupException with every fault, if the setup cannot be or lies outside the model's domain
     */
    public static JointPhysics of(JointSetup setup) {
        SetupCheck.check(setup);
        FreeVolume volume = FreeVolume.of(setup.emptyCavity(), setup.contents());
        Retention retention = Retention.of(setup.pins(), setup.fit());
        double area = Solids.disc(setup.innerDiameter().metres());
        double threshold = retention.mean() / area;
        double charge = threshold * volume.free() / powderForce(setup);
        DomainCheck.check(volume.free(), threshold, charge);
        LogUncertainty uncertainty = new LogUncertainty(
                retention.pinsSd() / retention.mean(),
                retention.fitSd() / retention.mean(),
                volume.sd() / volume.free(),
                setup.powder().relativeUncertainty());
        Ceiling ceiling = Ceilings.of(setup, volume.free(), area, threshold);
        List<Warning> warnings =
                Warnings.of(setup, volume, charge, ceiling, Separations.find(setup, volume.free(), area));
        return new JointPhysics(setup, volume, area, retention, threshold, charge, uncertainty, ceiling, warnings);
    }

    /** The same with one more thing that a person should know. */
    public JointPhysics warning(Warning more) {
        List<Warning> all = new ArrayList<>(warnings);
        all.add(more);
        return new JointPhysics(
                setup, volume, area, retention, thresholdPressure, handbookCharge, uncertainty, ceiling, all);
    }

    /** Free gas volume V in cubic metres. */
    public double freeVolume() {
        return volume.free();
    }

    /** Gauge pressure in pascals that a charge in kilograms makes, by the formula. */
    public double gaugePressure(double chargeKg) {
        return chargeKg * powderForce(setup) / freeVolume();
    }

    /** As {@link #separationSpeed(double)}, in air of another pressure in pascals, inside and out. */
    public Optional<Double> separationSpeed(double chargeKg, double airPressure) {
        return Separations.find(setup, freeVolume(), area, airPressure, airPressure)
                .map(s -> s.speed(chargeKg));
    }

    /**
     * Relative speed in m/s of the two parts for a charge in kilograms at sea level, or empty where a mass or the shoulder is
     * not known. For a correction κ pass the charge over κ.
     */
    public Optional<Double> separationSpeed(double chargeKg) {
        return Separations.find(setup, freeVolume(), area).map(s -> s.speed(chargeKg));
    }

    public static double powderForce(JointSetup setup) {
        return setup.powder().force().joulesPerKilogram();
    }
}
