package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Basis;
import org.sunder.advice.LoadWords;
import org.sunder.advice.Loads;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.Occasion;

/** What separations whose speed was measured asked of harness and bulkheads. */
@Schema(
        name = "Loads",
        description = "What separations whose speed was measured asked of harness and bulkheads, newest first.")
record LoadsView(List<PartingView> partings, List<CautionView> cautions, Basis basis) {

    private static final MathContext DIGITS = new MathContext(3);

    /** A separation whose speed was measured. */
    @Schema(
            name = "MeasuredParting",
            description = "A separation whose speed was measured, beside what the formula says.")
    record PartingView(
            UUID testId,
            Occasion occasion,
            OffsetDateTime firedAt,
            Mass charge,

            @Schema(description = "As measured.") Speed speed,

            @Schema(
                    description = "How good that is, one standard deviation in percent, where it was given.",
                    example = "6")
            @Nullable BigDecimal speedUncertaintyPercent,

            @Schema(description = "By the formula, with the correction as it stood after the test.")
            Speed predicted,

            @Schema(description = "The speed over the predicted one.", example = "1.18")
            BigDecimal ratio,

            @Schema(description = "Energy of the parting in joules, which the harness takes.", example = "41.3")
            BigDecimal energyJoules,

            @Schema(
                    description =
                            "Peak load of a harness that takes it as a linear spring, where its stretch was given.")
            @Nullable Force peakLoad,

            @Schema(
                    description = "Gauge pressure from which the gas gives that speed without losses: the compartment"
                            + " saw that or more.")
            Pressure leastPressure,

            @Schema(description = "That pressure on the area of the joint.")
            Force bulkheadForce,

            @Schema(
                    description = "That it passed what was stated of harness or structure; absent where it did not.",
                    example =
                            "The parts left faster than the 12 m/s stated for the harness: look over harness, bulkheads and fittings"
                                    + " before anything is fired again.")
            @Nullable String warning) {}

    static LoadsView of(Loads.Measured measured, @Nullable Length stretch, Display display) {
        return new LoadsView(
                measured.partings().stream()
                        .map(parting -> of(parting, measured.measure(), stretch, display))
                        .toList(),
                CautionView.all(),
                measured.basis());
    }

    private static PartingView of(Loads.Parting parting, Mass measure, @Nullable Length stretch, Display display) {
        var report = parting.test().report();
        var load = parting.load();
        return new PartingView(
                parting.test().id(),
                parting.test().occasion(),
                report.firedAt(),
                Display.loaded(report.charge(), measure),
                display.speed(load.measured()),
                report.speedUncertaintyPercent(),
                display.speed(load.predicted()),
                number(load.predicted() > 0 ? load.measured() / load.predicted() : 0),
                number(load.energy()),
                stretch == null ? null : display.force(parting.shock(stretch).peakLoad()),
                display.pressure(load.leastPressure()),
                display.force(load.bulkheadForce()),
                LoadWords.warning(load, display));
    }

    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).round(DIGITS);
    }
}
