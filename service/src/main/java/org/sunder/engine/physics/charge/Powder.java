package org.sunder.engine.physics.charge;

import java.math.BigDecimal;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.SpecificEnergyUnit;

/**
 * A powder.
 *
 * @param name what it is called
 * @param force powder force λ: energy a kilogram gives to the gas, R·T
 * @param relativeUncertainty relative standard deviation of λ
 */
public record Powder(String name, SpecificEnergy force, double relativeUncertainty) {

    /**
     * Fine-grain black powder: 22.16 ft·lbf/(lbm·°R) × 3307 °R = 73 283.12 ft·lbf/lbm = 219.05 kJ/kg, common practice.
     * Noble & Abel (Phil. Trans. R. Soc. 165, 1875) give about 257 kJ/kg before heat loss. Uncertainty 5 % from lot to lot,
     * this project's choice.
     */
    public static final Powder FINE_BLACK_POWDER = new Powder(
            "fine-grain black powder",
            new SpecificEnergy(
                    new BigDecimal("22.16").multiply(new BigDecimal("3307")),
                    SpecificEnergyUnit.FOOT_POUND_FORCE_PER_POUND),
            0.05);
}
