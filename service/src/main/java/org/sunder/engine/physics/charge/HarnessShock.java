package org.sunder.engine.physics.charge;

import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;

/**
 * What the recovery harness sees when it runs out: the energy ½·m_r·v² of the parting, m_r the reduced mass, and the peak
 * load of a harness that takes it as a linear spring, F = m_r·v²/x with stretch x.
 *
 * @param energy J
 * @param peakLoad N
 */
public record HarnessShock(double energy, double peakLoad) {

    /** Stretches of a harness that are answered for, m. */
    public static final Range STRETCH = new Range(0.001, 100, "1 mm to 100 m");

    private static final Range SPEED = new Range(0, 300, "0 to 300 m/s");

    /**
     * Of two parts that leave each other at a relative speed in m/s.
     *
     * @param stretch how far the harness lengthens at its limit
     * @throws UnsoundSetupException with every fault
     */
    public static HarnessShock of(double speed, Mass forward, Mass aft, Length stretch) {
        Faults faults = new Faults();
        faults.range("speed", speed, SPEED);
        faults.range("forwardMass", forward, SetupBounds.PART_MASS);
        faults.range("aftMass", aft, SetupBounds.PART_MASS);
        faults.range("stretch", stretch, STRETCH);
        faults.throwIfAny();
        double energy = Separations.reducedMass(forward.kilograms(), aft.kilograms()) * speed * speed / 2;
        return new HarnessShock(energy, 2 * energy / stretch.metres());
    }
}
