package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.quantity.Length;

/** An airframe as answered. */
@Schema(name = "Airframe", description = "One rocket as built.")
record AirframeView(
        UUID id,
        String name,
        UnitSystem units,
        @Nullable Length outerDiameter,
        @Nullable String notes,
        Instant createdAt,

        @Schema(description = "When it was put away; absent while it is in use.") @Nullable Instant archivedAt) {

    static AirframeView of(Airframe airframe) {
        return new AirframeView(
                airframe.id(),
                airframe.name(),
                airframe.units(),
                airframe.outerDiameter(),
                airframe.notes(),
                airframe.createdAt(),
                airframe.archivedAt());
    }
}
