package org.sunder.engine.physics;

/**
 * Allowed values of an input, both ends included.
 *
 * @param min least value in SI
 * @param max greatest value in SI
 * @param text the same for people
 */
public record Range(double min, double max, String text) {

    /** Whether a value lies inside; false for what is not a number. */
    public boolean contains(double si) {
        return si >= min && si <= max;
    }
}
