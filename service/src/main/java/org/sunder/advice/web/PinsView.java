package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;

/** Shear pins of one thread. */
@Schema(name = "PinsOfOneThread", description = "Shear pins of one thread.")
record PinsView(
        @Schema(example = "M2.5") String thread,
        @Schema(example = "2") int count) {}
