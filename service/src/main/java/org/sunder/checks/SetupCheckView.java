package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.sunder.airframe.CeilingView;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Area;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Volume;

/** What the physics makes of a setup. */
@Schema(name = "SetupCheck", description = "What the physics makes of a setup before it is stored.")
record SetupCheckView(
        @Schema(description = "Volume of the empty cavity.") Volume cavityVolume,

        @Schema(description = "What each item takes of it, in the order listed.")
        List<VolumeView.TakenView> contents,

        @Schema(description = "Gas volume that the charge pressurises.")
        Volume freeVolume,

        @Schema(description = "Area the pressure acts on at the joint.")
        Area area,

        @Schema(description = "Force that keeps the joint closed: pins and fit.")
        Force retention,

        @Schema(description = "Gauge pressure at which the joint is expected to part.")
        Pressure thresholdPressure,

        @Schema(description = "What the textbook formula asks for: an estimate, not a charge to fire or fly.")
        Mass handbookCharge,

        @Schema(description = "Relative standard deviation of it from its inputs.", example = "0.113")
        BigDecimal uncertainty,

        CeilingView ceiling,
        List<Warning> warnings,
        List<CautionView> cautions) {

    static SetupCheckView of(JointPhysics physics, Mass measure, Display display) {
        return new SetupCheckView(
                display.volume(physics.volume().cavity()),
                physics.volume().contents().stream()
                        .map(share -> new VolumeView.TakenView(share.name(), display.volume(share.volume())))
                        .toList(),
                display.volume(physics.freeVolume()),
                display.area(physics.area()),
                display.force(physics.retention().mean()),
                display.pressure(physics.thresholdPressure()),
                Display.charge(physics.handbookCharge(), measure),
                Numbers.digits(physics.uncertainty().total()),
                CeilingView.of(physics.ceiling(), measure),
                physics.warnings(),
                CautionView.all());
    }
}
