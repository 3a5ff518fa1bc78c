package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.CeilingView;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.flight.LoadKind;
import org.sunder.engine.physics.flight.PinChoice;
import org.sunder.engine.physics.flight.PinsInFlight;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Mass;

/** Whether the pins hold in flight. */
@Schema(name = "PinsInFlight", description = "Whether the pins hold in flight until the charge breaks them.")
record PinsInFlightView(
        @Schema(description = "What the pins surely hold: weak pins, no friction.")
        Force holdingForce,

        List<LoadView> loads,

        @Schema(description = "The largest load.") Force worst,

        @Schema(description = "Holding force over the largest load; absent where nothing pulls.", example = "2.31")
        @Nullable BigDecimal margin,

        @Schema(description = "The margin asked for.", example = "2")
        BigDecimal requiredMargin,

        @Schema(description = "Whether the pins of the setup reach it.")
        boolean holds,

        SmallestView smallest,
        List<CautionView> cautions) {

    /** One load. */
    @Schema(name = "FlightLoad", description = "One load on the joint in flight.")
    record LoadView(
            LoadKind kind,
            Force force,

            @Schema(description = "Holding force over this load; absent where it does not pull.", example = "2.31")
            @Nullable BigDecimal margin) {}

    /** The smallest count that holds. */
    @Schema(name = "SmallestPinCount", description = "The smallest count of the first kind of pin that holds.")
    record SmallestView(
            @Schema(example = "3") int count,

            @Schema(
                    description = "Whether a charge may break that many: false says that no count both holds and parts,"
                            + " so vent the compartment, or change area, volume or load.")
            boolean chargeBelowCeiling,

            @Schema(description = "What surely breaks them and the fit.")
            Force breakingForce,

            @Schema(
                    description =
                            "What the textbook formula asks for to break strong pins: an estimate, not a charge to fly.")
            Mass charge,

            @Schema(description = "The ceiling with that many pins.")
            CeilingView ceiling) {

        static SmallestView of(PinChoice choice, Display display, Mass measure) {
            double breaking = choice instanceof PinChoice.Holds holds
                    ? holds.breakingForce()
                    : ((PinChoice.NoCountDoesBoth) choice).breakingForce();
            return new SmallestView(
                    choice.count(),
                    choice instanceof PinChoice.Holds,
                    display.force(breaking),
                    Display.charge(choice.chargeKg(), measure),
                    CeilingView.of(choice.ceiling(), measure));
        }
    }

    static PinsInFlightView of(PinsInFlight pins, BigDecimal required, Display display, Mass measure) {
        return new PinsInFlightView(
                display.force(pins.holdingForce()),
                pins.loads().stream()
                        .map(load -> new LoadView(
                                load.kind(), display.force(load.force()), margin(load.margin(pins.holdingForce()))))
                        .toList(),
                display.force(pins.worst()),
                margin(pins.margin()),
                required,
                pins.holds(),
                SmallestView.of(pins.smallest(), display, measure),
                CautionView.all());
    }

    private static @Nullable BigDecimal margin(double margin) {
        return Double.isInfinite(margin) ? null : Numbers.digits(margin);
    }
}
