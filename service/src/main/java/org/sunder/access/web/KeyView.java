package org.sunder.access.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.access.AccessKey;
import org.sunder.access.IssuedKey;
import org.sunder.access.Scope;
import org.sunder.web.Created;

/** A key as answered. */
@Schema(name = "AccessKey", description = "An access key, without its secret.")
record KeyView(
        UUID id,
        @Schema(example = "phone") String name,
        Scope scope,

        @Schema(description = "How the key begins, to tell it from others.", example = "sunder_Ab3dE")
        String prefix,

        Instant createdAt,
        @Nullable Instant expiresAt,

        @Schema(description = "Last use, to the minute.") @Nullable Instant lastUsedAt,

        @Nullable Instant revokedAt,

        @Schema(description = "The key itself: in the answer that makes it and never again.") @Nullable String key) {

    static KeyView of(AccessKey key) {
        return of(key, null);
    }

    /** The answer that shows a key, once, and what a repeated request is told. */
    static Created created(String path, IssuedKey issued) {
        AccessKey key = issued.key();
        String told = "The key " + key.prefix() + "… with the id " + key.id() + " was made and shown once. If it never"
                + " arrived, revoke it and make another with a new Idempotency-Key.";
        return new Created(path + key.id(), null, of(key, issued.secret()), told);
    }

    private static KeyView of(AccessKey key, @Nullable String secret) {
        return new KeyView(
                key.id(),
                key.name(),
                key.scope(),
                key.prefix(),
                key.createdAt(),
                key.expiresAt(),
                key.lastUsedAt(),
                key.revokedAt(),
                secret);
    }
}
