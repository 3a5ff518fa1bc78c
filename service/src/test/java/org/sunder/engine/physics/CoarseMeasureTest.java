package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.charge.CoarseMeasure;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;

class CoarseMeasureTest {

    private static Mass mass(String value, MassUnit unit) {
        return new Mass(new BigDecimal(value), unit);
    }

    @Test
    void aStepAboveAQuarterOfTheHandbookChargeIsTooCoarse() {
        assertThat(CoarseMeasure.warning(0.00015, mass("0.05", MassUnit.GRAM)))
                .hasValue(new Warning(
                        "coarse-measure",
                        "A 0.15 g charge cannot be planned with 0.05 g steps; a scale that reads 0.01 g does."));
        assertThat(CoarseMeasure.warning(0.0001999, mass("0.05", MassUnit.GRAM)))
                .isPresent();
        assertThat(CoarseMeasure.warning(0.00020001, mass("0.05", MassUnit.GRAM)))
                .isEmpty();
    }

    @Test
    void aFinerMeasureIsNamedInTheUnitOfTheMeasure() {
        // 0.15 g are 2.3 grains
        assertThat(CoarseMeasure.warning(0.00015, mass("1", MassUnit.GRAIN))
                        .orElseThrow()
                        .text())
                .isEqualTo("A 2.3 gr charge cannot be planned with 1 gr steps; a scale that reads 0.1 gr does.");
        assertThat(CoarseMeasure.finer(0.00015, mass("1", MassUnit.GRAIN))).hasValue(mass("0.1", MassUnit.GRAIN));
    }

    @Test
    void aMeasureFineEnoughStillHasAFinerOne() {
        assertThat(CoarseMeasure.finer(0.001, mass("0.05", MassUnit.GRAM))).hasValue(mass("0.01", MassUnit.GRAM));
        assertThat(CoarseMeasure.finer(0.001, mass("0.01", MassUnit.GRAM))).hasValue(mass("0.001", MassUnit.GRAM));
    }

    @Test
    void noFinerMeasureIsNamedThanASetupMayHave() {
        assertThat(CoarseMeasure.finer(0.000002, mass("0.001", MassUnit.GRAM))).isEmpty();
        assertThat(CoarseMeasure.warning(0.000002, mass("0.001", MassUnit.GRAM))
                        .orElseThrow()
                        .text())
                .isEqualTo("A 0.002 g charge cannot be planned with 0.001 g steps, and no finer ones are taken.");
    }
}
