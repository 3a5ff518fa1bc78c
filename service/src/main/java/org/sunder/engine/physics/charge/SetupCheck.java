package org.sunder.engine.physics.charge;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.ContentCheck;
import org.sunder.engine.physics.cavity.SegmentCheck;
import org.sunder.engine.physics.retention.RetentionCheck;

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
        new RetentionCheck(check.faults).check(setup.pins(), setup.fit());
        check.powder(setup.powder());
        check.parts(setup);
        check.faults.throwIfAny();
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
