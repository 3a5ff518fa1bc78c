package org.sunder.engine.physics.retention;

/**
 * Pins of one kind in a joint.
 *
 * @param thread their thread
 * @param count how many
 * @param strength how strong one is
 */
public record PinSet(PinThread thread, int count, PinStrength strength) {

    /** Nylon 6/6 pins at handbook strength. */
    public static PinSet ofNylon(PinThread thread, int count) {
        return new PinSet(thread, count, PinStrength.MaterialShear.NYLON_66);
    }

    /** Expected force in newtons that breaks them all. */
    public double force() {
        return count * strength.forceOfOne(thread);
    }

    /** Standard deviation in newtons of that force. */
    public double sd() {
        return strength.sdOf(count, thread);
    }
}
