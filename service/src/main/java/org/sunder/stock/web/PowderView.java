package org.sunder.stock.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.StockPowder;

/** A powder as answered. */
@Schema(name = "Powder", description = "A powder of the stock.")
record PowderView(
        UUID id,
        @Schema(example = "fine black, tin 3") String name,
        @Schema(example = "L24-117") @Nullable String lot,
        @Schema(example = "4F") @Nullable String granulation,
        SpecificEnergy powderForce,
        @Schema(example = "0.10") BigDecimal relativeUncertainty,
        @Nullable String note,

        @Schema(description = "Whether it is the standard powder, which is always there and never changed.")
        boolean standard,

        @Schema(description = "When it was entered; absent for the standard powder.") @Nullable Instant createdAt,

        @Schema(description = "When it was put away; absent while it is in use.") @Nullable Instant archivedAt) {

    static PowderView of(StockPowder powder) {
        PowderDetails details = powder.details();
        return new PowderView(
                powder.id(),
                details.name(),
                details.lot(),
                details.granulation(),
                details.powderForce(),
                details.relativeUncertainty(),
                details.note(),
                powder.standard(),
                powder.standard() ? null : powder.createdAt(),
                powder.archivedAt());
    }
}
