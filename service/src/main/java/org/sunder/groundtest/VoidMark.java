package org.sunder.groundtest;

import java.time.Instant;

/**
 * A test taken out of the fit, or back into it.
 *
 * @param voided true where it was taken out
 * @param reason why
 * @param at when
 */
public record VoidMark(boolean voided, String reason, Instant at) {}
