package org.sunder.access;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A key, without its secret.
 *
 * @param id UUID version 7
 * @param name what it is for, e.g. "phone"
 * @param scope what it may do
 * @param prefix how the key begins, to tell it from others
 * @param createdAt when it was made
 * @param expiresAt when it ends by itself
 * @param lastUsedAt when it was last used, to the minute
 * @param revokedAt when it was revoked
 */
public record AccessKey(
        UUID id,
        String name,
        Scope scope,
        String prefix,
        Instant createdAt,
        @Nullable Instant expiresAt,
        @Nullable Instant lastUsedAt,
        @Nullable Instant revokedAt) {}
