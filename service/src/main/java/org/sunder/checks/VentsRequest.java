package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;

/** An electronics bay to be vented. */
@Schema(name = "VentsQuestion", description = "An electronics bay to be vented.")
record VentsRequest(
        @Schema(description = "Free volume of the bay.") @NotNull(message = "the bay's volume is needed") Volume bayVolume,

        @Schema(description = "Equal holes: 1, or 3 and more; 3 where not given.", example = "4") @Nullable Integer holes,

        @Schema(description = "Fastest ascent.") @NotNull(message = "the ascent speed is needed") Speed ascentSpeed,

        @Schema(description = "Elevation of the site; sea level where not given.") @Nullable Length siteElevation) {}
