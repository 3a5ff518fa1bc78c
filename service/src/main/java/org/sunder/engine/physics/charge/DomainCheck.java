package org.sunder.engine.physics.charge;

import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;

/** Refuses what lies outside the model's domain, rather than to extrapolate. */
final class DomainCheck {

    private DomainCheck() {}

    /** Free volume in m³, threshold in Pa, handbook charge in kg. */
    static void check(double freeVolume, double threshold, double charge) {
        Faults faults = new Faults();
        if (freeVolume > SetupBounds.DOMAIN_VOLUME) {
            faults.add(
                    "cavity",
                    SetupBounds.brief(1000 * freeVolume) + " L",
                    "the free volume is outside the model's domain",
                    "at most 200 L");
        }
        if (threshold > SetupBounds.DOMAIN_PRESSURE) {
            faults.add(
                    "pins",
                    SetupBounds.brief(threshold / 1000) + " kPa",
                    "the threshold pressure is outside the model's domain: fewer or weaker pins, or more area",
                    "at most 1000 kPa");
        }
        if (charge > SetupBounds.DOMAIN_CHARGE) {
            faults.add(
                    "pins",
                    SetupBounds.brief(1000 * charge) + " g",
                    "the handbook charge is outside the model's domain: fewer pins or less volume",
                    "at most 50 g");
        }
        faults.throwIfAny();
    }
}
