package org.sunder.pool.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;

/** Whether to use the pool. */
@Schema(name = "Using", description = "Whether answers may rest on the pool.")
record UsingRequest(
        @NotNull(message = "true or false is needed") Boolean using) {}
