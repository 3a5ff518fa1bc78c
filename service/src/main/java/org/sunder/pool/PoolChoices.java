package org.sunder.pool;

import org.jspecify.annotations.Nullable;

/**
 * What a flyer chose of the pool.
 *
 * @param sharing whether the own log is in the next snapshot
 * @param using whether answers may rest on a snapshot
 * @param snapshot number of the snapshot that answers rest on where it is used; null before the first
 */
public record PoolChoices(
        boolean sharing, boolean using, @Nullable Integer snapshot) {}
