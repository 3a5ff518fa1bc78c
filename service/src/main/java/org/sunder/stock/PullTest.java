package org.sunder.stock;

import java.time.Instant;
import org.sunder.engine.quantity.Force;

/**
 * One pin of a batch, pulled until it broke.
 *
 * @param force break force as measured
 * @param at when it was entered
 * @param leftOut whether it stays but does not count
 */
public record PullTest(Force force, Instant at, boolean leftOut) {}
