package org.sunder.engine.learning.posterior;

/**
 * What is needed to trust a posterior.
 *
 * @param combinations combinations of hyperparameters that entered
 * @param edgeMass posterior mass at the outermost nodes of the grid of c; above 1e-4 the answer is at the end of its
 *     valid range
 */
public record Diagnostics(int combinations, double edgeMass) {}
