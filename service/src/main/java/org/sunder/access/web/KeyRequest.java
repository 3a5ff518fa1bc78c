package org.sunder.access.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.sunder.access.Scope;

/** A key to make. */
@Schema(name = "AccessKeyRequest", description = "A key to make.")
record KeyRequest(
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "up to 80 characters") @Schema(description = "What it is for.", example = "phone")
        String name,

        @NotNull(message = "a scope is needed") @Schema(description = "What it may do; an admin key is given by an admin key only.", example = "log-only")
        Scope scope,

        @Schema(description = "When it ends by itself; never where not given.") @Nullable OffsetDateTime expiresAt) {}
