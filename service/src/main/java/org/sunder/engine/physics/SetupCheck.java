package org.sunder.engine.physics;

import org.jspecify.annotations.Nullable;

/** Checks every stated value of a setup against its bounds and against the others; geometry only where the parts are sound. */
final class SetupCheck {

    private final Faults faults = new Faults();

    private SetupCheck() {}

    /** Throws {@link UnsoundSetupException} with every fault found. */
    static void check(JointSetup setup) {
        SetupCheck check = new SetupCheck();
        check.faults.range("innerDiameter", setup.innerDiameter(), SetupBounds.INNER_DIAMETER);
        boolean sound = new SegmentCheck(check.faults).check(setup.cavity());
        new ContentCheck(check.faults, sound ? setup.emptyCavity() : null).check(setup.contents());
        check.retention(setup);
        check.powder(setup.powder());
        check.parts(setup);
        check.faults.throwIfAny();
    }

    private void retention(JointSetup setup) {
        faults.range("pins", setup.pins().size(), SetupBounds.LIST_LENGTH);
        for (int i = 0; i < setup.pins().size(); i++) {
            PinSet set = setup.pins().get(i);
            faults.range("pins[" + i + "].count", set.count(), SetupBounds.PIN_COUNT);
            strength("pins[" + i + "].strength", set.strength());
        }
        faults.range("fit.force", setup.fit().force(), SetupBounds.FIT_FORCE);
        faults.range("fit.uncertainty", setup.fit().uncertainty(), SetupBounds.FIT_FORCE);
        if (faults.none() && Retention.of(setup.pins(), setup.fit()).mean() < SetupBounds.LEAST_RETENTION) {
            faults.add("pins", "[]", "nothing keeps the joint closed", "pins, or a fit force, of 1 N and more in all");
        }
    }

    private void strength(String path, PinStrength strength) {
        if (strength instanceof PinStrength.MaterialShear shear) {
            faults.range(path + ".strength", shear.strength(), SetupBounds.SHEAR_STRENGTH);
            faults.range(path + ".relativeUncertainty", shear.relativeUncertainty(), SetupBounds.RELATIVE_UNCERTAINTY);
        } else if (strength instanceof PinStrength.MeasuredBatch batch) {
            faults.range(path + ".mean", batch.mean(), SetupBounds.PIN_FORCE);
            faults.range(
                    path + ".standardDeviation",
                    batch.standardDeviation(),
                    new Range(0, Math.max(0, batch.mean().newtons()), "0 to the mean"));
            faults.range(path + ".tests", batch.tests(), SetupBounds.PULL_TESTS);
        }
    }

    private void powder(Powder powder) {
        faults.range("powder.force", powder.force(), SetupBounds.POWDER_FORCE);
        faults.range("powder.relativeUncertainty", powder.relativeUncertainty(), SetupBounds.RELATIVE_UNCERTAINTY);
    }

    private void parts(JointSetup setup) {
        faults.range("shoulder", setup.shoulder(), SetupBounds.SHOULDER);
        faults.range("forwardMass", setup.forwardMass(), SetupBounds.PART_MASS);
        faults.range("aftMass", setup.aftMass(), SetupBounds.PART_MASS);
        if (setup.limit() instanceof Limit.GaugePressureLimit limit) {
            faults.range("limit.pressure", limit.pressure(), SetupBounds.PRESSURE_LIMIT);
        } else if (setup.limit() instanceof Limit.SeparationSpeedLimit limit) {
            faults.range("limit.speed", limit.speed(), SetupBounds.SPEED_LIMIT);
            needed("shoulder", setup.shoulder());
            needed("forwardMass", setup.forwardMass());
            needed("aftMass", setup.aftMass());
        }
    }

    private void needed(String path, @Nullable Object value) {
        if (value == null) {
            faults.add(path, "none", "a limit of separation speed needs it", "a value");
        }
    }
}
