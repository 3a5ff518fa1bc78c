package org.sunder.page;

import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.stock.PowderDetails;
import org.sunder.stock.StockPowder;

/** A powder in a list, in words. */
record PowderSheet(
        UUID id,
        String name,
        boolean standard,
        String force,
        String uncertainty,
        @Nullable String lot,
        @Nullable String note) {

    static PowderSheet of(StockPowder powder) {
        PowderDetails details = powder.details();
        BigDecimal percent = details.relativeUncertainty().movePointRight(2).stripTrailingZeros();
        return new PowderSheet(
                powder.id(),
                details.name(),
                powder.standard(),
                Words.digits(details.powderForce().si() / 1000) + " kJ/kg",
                "± " + percent.toPlainString() + " %",
                details.lot(),
                details.note());
    }
}
