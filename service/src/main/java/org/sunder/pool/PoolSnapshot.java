package org.sunder.pool;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What the pool knew at a time. It never changes.
 *
 * @param number 1, 2, 3, … on this service
 * @param givenBy who gave the file, in the words of whoever took it in; null where it was made here
 * @param storedAt when it was made or taken in
 * @param file what it says
 */
public record PoolSnapshot(int number, @Nullable String givenBy, Instant storedAt, PoolFile file) {}
