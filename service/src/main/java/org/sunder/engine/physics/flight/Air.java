package org.sunder.engine.physics.flight;

/**
 * The state of air.
 *
 * @param temperature K
 * @param pressure Pa
 * @param density kg/m³
 */
public record Air(double temperature, double pressure, double density) {}
