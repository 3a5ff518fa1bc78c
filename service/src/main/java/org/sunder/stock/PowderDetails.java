package org.sunder.stock;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.SpecificEnergy;

/**
 * What a flyer says about a powder and may change.
 *
 * @param name what setups name it by
 * @param lot the maker's lot
 * @param granulation grain size as sold
 * @param powderForce energy a kilogram gives to the gas
 * @param relativeUncertainty relative standard deviation of the powder force
 * @param note free text
 */
public record PowderDetails(
        String name,
        @Nullable String lot,
        @Nullable String granulation,
        SpecificEnergy powderForce,
        BigDecimal relativeUncertainty,
        @Nullable String note) {

    /** Of a lot that nothing is known of: twice that of the standard powder, this project's choice. */
    public static final BigDecimal NEW_LOT = new BigDecimal("0.10");
}
