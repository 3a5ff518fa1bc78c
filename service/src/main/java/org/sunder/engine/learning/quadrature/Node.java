package org.sunder.engine.learning.quadrature;

/**
 * A node of a quadrature rule.
 *
 * @param value where
 * @param weight how much it counts; the weights of a rule add to 1
 */
public record Node(double value, double weight) {}
