package org.sunder.engine.physics.charge;

/**
 * The charge that must never be exceeded.
 *
 * @param chargeKg kilograms
 * @param source where it comes from
 */
public record Ceiling(double chargeKg, CeilingSource source) {}
