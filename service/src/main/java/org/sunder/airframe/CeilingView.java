package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.charge.CeilingSource;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;

/** The charge never to be exceeded. */
@Schema(name = "Ceiling", description = "The charge that must never be exceeded, and where it comes from.")
public record CeilingView(
        @Schema(example = "2.082") BigDecimal value,
        MassUnit unit,

        @Schema(description = "The limit it comes from; default is three times the threshold pressure.")
        CeilingSource source) {

    /** As answered, never rounded up. */
    public static CeilingView of(Ceiling ceiling, Mass measure) {
        Mass limit = Display.limit(ceiling.chargeKg(), measure);
        return new CeilingView(limit.value(), limit.unit(), ceiling.source());
    }
}
