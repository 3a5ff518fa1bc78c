package org.sunder.engine.physics.retention;

import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;

/**
 * Whether a shoulder is long enough. One calibre of engagement is the rule (common practice, no source). Below it evenly
 * spaced pins steady the joint: three from half a calibre up, four below that (this project's choice).
 *
 * @param calibres engagement over inner diameter
 * @param pinsToSteady pins needed to steady the joint, 0 where the shoulder does it alone
 * @param steady whether the joint is steady with the pins it has
 * @param text what to tell
 */
public record ShoulderCheck(double calibres, int pinsToSteady, boolean steady, String text) {

    private static final double FULL = 1; // calibre, common practice
    private static final double HALF = 0.5; // calibre, this project's choice

    /**
     * Of a joint with a number of pins.
     *
     * @throws UnsoundSetupException with every fault
     */
    public static ShoulderCheck of(Length innerDiameter, Length shoulder, int pins) {
        Faults faults = new Faults();
        faults.range("innerDiameter", innerDiameter, SetupBounds.INNER_DIAMETER);
        faults.range("shoulder", shoulder, SetupBounds.SHOULDER);
        faults.throwIfAny();
        double calibres = shoulder.metres() / innerDiameter.metres();
        int needed = calibres >= FULL ? 0 : calibres >= HALF ? 3 : 4;
        return new ShoulderCheck(calibres, needed, pins >= needed, text(calibres, needed, pins));
    }

    private static String text(double calibres, int needed, int pins) {
        if (needed == 0) {
            return "The shoulder engages one calibre or more.";
        }
        String engaged = "The shoulder engages " + SetupBounds.brief(calibres) + " calibre, less than one: ";
        return pins >= needed
                ? engaged + pins + " evenly spaced pins steady the joint; check it for play."
                : engaged + needed + " evenly spaced pins steady the joint, but it has " + pins
                        + ". Lengthen the shoulder or add pins.";
    }
}
