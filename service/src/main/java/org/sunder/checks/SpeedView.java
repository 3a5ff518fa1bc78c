package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.MeasuredSpeed;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Speed;

/** A measured separation speed. */
@Schema(name = "MeasuredSpeed", description = "A measured separation speed, and what the harness sees of it.")
record SpeedView(
        Speed speed,

        @Schema(description = "One standard deviation of it.")
        Speed uncertainty,

        @Schema(description = "The same in percent of the speed, as a report of a test takes it.", example = "8.5")
        BigDecimal speedUncertaintyPercent,

        @Schema(description = "What the harness sees, where it is described.") @Nullable ShockView shock) {

    /** The shock on the harness. */
    @Schema(name = "HarnessShock", description = "What the harness sees when it runs out.")
    record ShockView(
            @Schema(description = "Energy of the parting in joules.", example = "41.3")
            BigDecimal energyJoules,

            @Schema(description = "Peak load of a harness that takes it as a linear spring.")
            Force peakLoad) {

        static ShockView of(HarnessShock shock, Display display) {
            return new ShockView(Numbers.digits(shock.energy()), display.force(shock.peakLoad()));
        }
    }

    static SpeedView of(MeasuredSpeed measured, @Nullable ShockView shock, Display display) {
        return new SpeedView(display.speed(measured.speed()), display.speed(measured.sd()), measured.percent(), shock);
    }
}
