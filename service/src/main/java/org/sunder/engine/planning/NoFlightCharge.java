package org.sunder.engine.planning;

/**
 * No flight charge is supported.
 *
 * @param reason why, in plain sentences
 */
public record NoFlightCharge(String reason) implements FlightAdvice {}
