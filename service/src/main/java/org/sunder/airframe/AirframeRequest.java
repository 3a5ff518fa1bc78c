package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;

/** What a flyer says about an airframe. */
@Schema(description = "What a flyer says about an airframe.")
public record AirframeRequest(
        @Schema(example = "Bittern")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @Schema(description = "Units of the answers; metric where not given.") @Nullable UnitSystem units,

        @Nullable Length outerDiameter,

        @Size(max = 2000, message = "at most 2000 characters") @Nullable String notes) {

    /** What it says, with what it leaves out filled in. */
    public AirframeDetails details() {
        return new AirframeDetails(name, units == null ? UnitSystem.METRIC : units, outerDiameter, notes);
    }
}
