package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.AssertTrue;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Speed;

/**
 * The limit a flyer sets, one of two.
 *
 * @param gaugePressure highest gauge pressure the compartment stands
 * @param separationSpeed highest speed at which the sections may come apart
 */
@Schema(description = "The limit of the structure: a gauge pressure or a separation speed, not both.")
public record CeilingSheet(
        @Nullable Pressure gaugePressure, @Nullable Speed separationSpeed) {

    @Schema(hidden = true)
    @AssertTrue(message = "either gaugePressure or separationSpeed is needed, not both") boolean isOneLimit() {
        return (gaugePressure == null) != (separationSpeed == null);
    }
}
