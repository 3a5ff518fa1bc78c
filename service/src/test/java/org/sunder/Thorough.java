package org.sunder;

/**
 * Whether a run may take its time: {@code -Dsunder.test.thorough=true}, as in CI. Other runs take a sample of the same, and so does
 * the second run of the same tests on another database, since what a sample tries differs in what is asked, not in what keeps it.
 */
public final class Thorough {

    private Thorough() {}

    /** How many of a kind a run tries. */
    public static int count(int sample, int thorough) {
        return on() ? thorough : sample;
    }

    /** Whether this run is a thorough one. */
    public static boolean on() {
        return Boolean.getBoolean("sunder.test.thorough")
                && !"postgresql".equals(System.getProperty("sunder.test.database"));
    }
}
