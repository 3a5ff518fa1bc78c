package org.sunder.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.charge.Powder;

/**
 * A powder of the stock.
 *
 * @param id UUID version 7
 * @param details what is said about it
 * @param createdAt when it was entered
 * @param archivedAt when it was put away
 * @param version counts its changes
 */
public record StockPowder(
        UUID id,
        PowderDetails details,
        Instant createdAt,
        @Nullable Instant archivedAt,
        long version) {

    /** Always there, and never changed: fine-grain black powder by the handbook. */
    public static final StockPowder STANDARD = new StockPowder(
            UUID.fromString("00000000-0000-7000-8000-000000000010"),
            new PowderDetails(
                    Powder.FINE_BLACK_POWDER.name(),
                    null,
                    "fine",
                    Powder.FINE_BLACK_POWDER.force(),
                    BigDecimal.valueOf(Powder.FINE_BLACK_POWDER.relativeUncertainty()),
                    "The handbook's powder; it cannot be changed. Enter a lot of your own beside it."),
            Instant.EPOCH,
            null,
            0);

    /** Whether it is the one that is always there. */
    public boolean standard() {
        return id.equals(STANDARD.id);
    }
}
