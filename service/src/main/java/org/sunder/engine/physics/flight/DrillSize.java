package org.sunder.engine.physics.flight;

/**
 * A drill that can be bought.
 *
 * @param name as stamped on it, e.g. {@code 1/8 in}, {@code #30}, {@code 3.2 mm}
 * @param diameter m
 */
public record DrillSize(String name, double diameter) {}
