package org.sunder.engine.learning;

/**
 * A node of a quadrature rule.
 *
 * @param value where
 * @param weight how much it counts; the weights of a rule add to 1
 */
record Node(double value, double weight) {}
