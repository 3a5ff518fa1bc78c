package org.sunder.pool.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** Whether to share. */
@Schema(name = "Sharing", description = "Whether the own log is in the next snapshot of the pool.")
record SharingRequest(
        @NotNull(message = "true or false is needed") Boolean sharing) {}
