package org.sunder.engine.physics.charge;

import java.math.BigDecimal;
import java.util.Optional;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.quantity.Mass;

/** Whether the step of a scale or measure suits the charges of a setup. */
public final class CoarseMeasure {

    /** Steps that a handbook charge has at least: with fewer the next one up is more than a plan may go at once. */
    private static final int STEPS = 4;

    private static final int DIGITS = 2;

    private CoarseMeasure() {}

    /**
     * A warning, code coarse-measure, where the step is more than a quarter of the handbook charge.
     *
     * @param handbookCharge kg
     * @param measure step of charges
     */
    public static Optional<Warning> warning(double handbookCharge, Mass measure) {
        if (measure.kilograms() * STEPS <= handbookCharge) {
            return Optional.empty();
        }
        String finer = finer(handbookCharge, measure)
                .map(step -> "; a scale that reads " + Faults.show(step) + " does.")
                .orElse(", and no finer ones are taken.");
        Mass charge = Mass.ofKilograms(handbookCharge).in(measure.unit(), DIGITS);
        return Optional.of(new Warning(
                "coarse-measure",
                "A " + charge.value().toPlainString() + " " + charge.unit() + " charge cannot be planned with "
                        + Faults.show(measure) + " steps" + finer));
    }

    /**
     * The coarsest power of ten, in the unit of the measure, that is finer than it and at most a quarter of the handbook charge;
     * empty where that is finer than a setup may have.
     *
     * @param handbookCharge kg
     * @param measure step of charges
     */
    public static Optional<Mass> finer(double handbookCharge, Mass measure) {
        Mass quarter = Mass.ofKilograms(handbookCharge / STEPS);
        BigDecimal step = powerOfTen(quarter.valueIn(measure.unit()).min(measure.value()));
        if (step.compareTo(measure.value()) == 0) {
            step = step.movePointLeft(1);
        }
        return Optional.of(new Mass(step, measure.unit()))
                .filter(mass -> SetupBounds.MEASURE.contains(mass.kilograms()));
    }

    /** The greatest power of ten that a positive number reaches. */
    private static BigDecimal powerOfTen(BigDecimal value) {
        return BigDecimal.ONE.movePointRight(value.precision() - value.scale() - 1);
    }
}
