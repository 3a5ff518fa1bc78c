package org.sunder.engine.physics.retention;

import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.UnsoundSetupException;

/**
 * The axial force that keeps a joint closed.
 *
 * @param pins expected force of all pins, N
 * @param pinsSd its standard deviation, N
 * @param fit friction of the fit, N
 * @param fitSd its standard deviation, N
 */
public record Retention(double pins, double pinsSd, double fit, double fitSd) {

    /**
     * What pins and fit hold, with no joint around them.
     *
     * @throws UnsoundSetupException with every fault; paths {@code pins} and {@code fit}
     */
    public static Retention ofPins(List<PinSet> pins, Fit fit) {
        Faults faults = new Faults();
        new RetentionCheck(faults).check(pins, fit);
        faults.throwIfAny();
        return of(pins, fit);
    }

    /** Of pins and fit already checked. Material strengths may err together, so their deviations add; batches err apart. */
    public static Retention of(List<PinSet> pins, Fit fit) {
        double together = 0;
        double apart = 0;
        for (PinSet set : pins) {
            if (set.strength() instanceof PinStrength.MaterialShear) {
                together += set.sd();
            } else {
                apart += set.sd() * set.sd();
            }
        }
        double force = pins.stream().mapToDouble(PinSet::force).sum();
        return new Retention(
                force, Math.sqrt(together * together + apart), fit.force().newtons(), fit.sd());
    }

    /** Expected total F in newtons. */
    public double mean() {
        return pins + fit;
    }

    /** Standard deviation of the total in newtons. */
    public double sd() {
        return Math.sqrt(pinsSd * pinsSd + fitSd * fitSd);
    }
}
