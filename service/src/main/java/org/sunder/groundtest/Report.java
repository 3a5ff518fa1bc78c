package org.sunder.groundtest;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.Speed;

/**
 * What was seen in the field.
 *
 * @param charge the charge loaded, as measured
 * @param outcome what it did
 * @param damaged whether it broke anything
 * @param speed measured relative speed of the parts, of a separated test
 * @param speedUncertaintyPercent standard deviation of the speed in percent of it; the usual one where a speed has none
 * @param containment what held the powder
 * @param firedAt when, with the offset of the place
 * @param notes free text
 */
public record Report(
        Mass charge,
        Outcome outcome,
        boolean damaged,
        @Nullable Speed speed,
        @Nullable BigDecimal speedUncertaintyPercent,
        @Nullable Containment containment,
        OffsetDateTime firedAt,
        @Nullable String notes) {

    /** This report as the log keeps it: quantities written out, the time to the microsecond. */
    Report kept() {
        return new Report(
                new Mass(plain(charge), charge.unit()),
                outcome,
                damaged,
                speed == null ? null : new Speed(plain(speed), speed.unit()),
                speedUncertaintyPercent == null ? null : plain(speedUncertaintyPercent),
                containment,
                firedAt.truncatedTo(ChronoUnit.MICROS),
                notes);
    }

    private static BigDecimal plain(Quantity<?> quantity) {
        return plain(quantity.value());
    }

    private static BigDecimal plain(BigDecimal value) {
        return new BigDecimal(value.toPlainString());
    }
}
