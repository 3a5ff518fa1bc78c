package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;
import org.sunder.engine.physics.retention.Retention;
import org.sunder.engine.physics.retention.ShoulderCheck;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Pressure;

/** What keeps a joint closed. */
@Schema(name = "Retention", description = "The force that keeps a joint closed, and how well it is known.")
record RetentionView(
        @Schema(description = "Pins and fit together.") Force retention,

        @Schema(description = "One standard deviation of it.")
        Force uncertainty,

        @Schema(description = "Share of all pins.") Force pinForce,

        @Schema(description = "Share of the fit.") Force fitForce,
        List<PinForceView> pins,

        @Schema(description = "Gauge pressure that parts the joint, where the diameter is known.") @Nullable Pressure thresholdPressure,

        @Schema(description = "Whether the shoulder is long enough, where it is known.") @Nullable ShoulderView shoulder) {

    /** One set of pins. */
    @Schema(name = "PinForce", description = "What equal pins hold.")
    record PinForceView(
            @Schema(example = "M2.5") String thread,
            @Schema(example = "3") int count,

            @Schema(description = "Expected break force of one.")
            Force one,

            @Schema(description = "Of all of them.") Force all,

            @Schema(description = "Whether it comes from pull tests; else it is the handbook's nylon.")
            boolean measured) {

        static PinForceView of(PinSet pins, Display display) {
            return new PinForceView(
                    pins.thread().toString(),
                    pins.count(),
                    display.force(pins.strength().forceOfOne(pins.thread())),
                    display.force(pins.force()),
                    pins.strength() instanceof PinStrength.MeasuredBatch);
        }
    }

    /** How the shoulder engages. */
    @Schema(name = "Shoulder", description = "Whether the shoulder steadies the joint; one calibre is the rule.")
    record ShoulderView(
            @Schema(description = "Engagement over inner diameter.", example = "0.489")
            BigDecimal calibres,

            @Schema(description = "Pins needed to steady the joint; none where the shoulder does.", example = "4")
            int pinsToSteady,

            boolean steady,
            String text) {

        static ShoulderView of(ShoulderCheck check) {
            return new ShoulderView(
                    Numbers.digits(check.calibres()), check.pinsToSteady(), check.steady(), check.text());
        }
    }

    static RetentionView of(
            Retention retention,
            List<PinSet> pins,
            @Nullable Pressure threshold,
            @Nullable ShoulderView shoulder,
            Display display) {
        return new RetentionView(
                display.force(retention.mean()),
                display.force(retention.sd()),
                display.force(retention.pins()),
                display.force(retention.fit()),
                pins.stream().map(set -> PinForceView.of(set, display)).toList(),
                threshold,
                shoulder);
    }
}
