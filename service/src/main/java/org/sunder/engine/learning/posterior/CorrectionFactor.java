package org.sunder.engine.learning.posterior;

/**
 * The factor κ = e^c on the handbook charge.
 *
 * @param median half the belief is below
 * @param low 5 % of the belief is below
 * @param high 5 % of the belief is above
 */
public record CorrectionFactor(double median, double low, double high) {}
