package org.sunder.engine.physics.retention;

import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;

/** Checks what keeps a joint closed; paths begin with {@code pins} and {@code fit}. */
public final class RetentionCheck {

    private final Faults faults;

    public RetentionCheck(Faults faults) {
        this.faults = faults;
    }

    public void check(List<PinSet> pins, Fit fit) {
        int before = faults.size();
        faults.range("pins", pins.size(), SetupBounds.LIST_LENGTH);
        for (int i = 0; i < pins.size(); i++) {
            PinSet set = pins.get(i);
            faults.range("pins[" + i + "].count", set.count(), SetupBounds.PIN_COUNT);
            strength("pins[" + i + "].strength", set.strength());
        }
        faults.range("fit.force", fit.force(), SetupBounds.FIT_FORCE);
        faults.range("fit.uncertainty", fit.uncertainty(), SetupBounds.FIT_FORCE);
        boolean sound = faults.size() == before;
        if (sound && Retention.of(pins, fit).mean() < SetupBounds.LEAST_RETENTION) {
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
}
