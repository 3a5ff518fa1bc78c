package org.sunder;

/**
 * Whether a run may take its time: {@code -Dsunder.test.thorough=true}, as in CI. Other runs take a sample of the same, and so does
 * the second run of the same tests on another database, since what a sample tries differs in what is asked, not in what keeps it.
 * What is drawn at random from one seed tries the same each time: the whole of it runs by night, where
 * {@code -Dsunder.test.nightly=true} is given too.
 */
public final class Thorough {

    private Thorough() {}

    /** How many of a kind a run tries. */
    public static int count(int sample, int thorough) {
        return on() ? thorough : sample;
    }

    /** How many of what is drawn from one seed a run tries: the first of them, or by night all. */
    public static int count(int sample, int thorough, int nightly) {
        return on() && Boolean.getBoolean("sunder.test.nightly") ? nightly : count(sample, thorough);
    }

    /** Whether this run is a thorough one. */
    public static boolean on() {
        return Boolean.getBoolean("sunder.test.thorough")
                && !"postgresql".equals(System.getProperty("sunder.test.database"));
    }
}
