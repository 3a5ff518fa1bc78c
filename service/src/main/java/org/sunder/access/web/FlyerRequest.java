package org.sunder.access.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/** A flyer to enter. */
@Schema(name = "FlyerRequest", description = "A flyer to enter.")
record FlyerRequest(
        @NotBlank(message = "a name is needed") @Size(max = 100, message = "up to 100 characters") @Schema(description = "What the club calls them.", example = "flyer 12")
        String name) {}
