package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Basis;
import org.sunder.airframe.CeilingView;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.quantity.Area;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;
import org.sunder.groundtest.CorrectionView;

/** The physics of the setup in force, and what the log makes of it. */
@Schema(name = "Estimate", description = "The physics of the setup in force, and what the log makes of it.")
record EstimateView(
        @Schema(description = "Volume of the empty cavity.") Volume cavityVolume,
        @Schema(description = "What each item takes of it.") List<Share> contents,

        @Schema(description = "Gas volume that the charge pressurises.")
        Volume freeVolume,

        @Schema(description = "Area the pressure acts on at the joint.")
        Area area,

        @Schema(description = "Force that keeps the joint closed: pins and fit.")
        Force retention,

        @Schema(description = "Share of the pins in it.") Force pinForce,

        @Schema(description = "Gauge pressure at which the joint is expected to part.")
        Pressure thresholdPressure,

        @Schema(description = "What the textbook formula asks for.")
        Mass handbookCharge,

        @Schema(description = "How uncertain the handbook charge is, and from what.")
        Uncertainty uncertainty,

        CorrectionView correction,

        @Schema(description = "Charge with an even chance of separating: an estimate, not a charge to fly.")
        Mass medianCharge,

        @Schema(description = "Charge with the target chance of separating: an estimate, not a charge to fly.")
        Mass targetCharge,

        @Schema(description = "The target chance.", example = "0.99")
        BigDecimal target,

        @Schema(
                description =
                        "Speed at which the parts leave each other at the target charge, where masses and shoulder"
                                + " are known.")
        @Nullable Speed separationSpeed,

        CeilingView ceiling,
        List<Warning> warnings,
        List<CautionView> cautions,
        Basis basis) {

    /** What one item takes. */
    @Schema(name = "VolumeShare", description = "What one item takes of the cavity.")
    record Share(@Schema(example = "main parachute") String name, Volume volume) {}

    /** Relative standard deviation of the handbook charge and its parts. */
    @Schema(
            name = "InputUncertainty",
            description = "Relative standard deviations; the total is the root of the sum of squares.")
    record Uncertainty(
            @Schema(example = "0.098") BigDecimal pins,
            @Schema(example = "0.012") BigDecimal fit,
            @Schema(example = "0.031") BigDecimal volume,
            @Schema(example = "0.05") BigDecimal powder,
            @Schema(example = "0.115") BigDecimal total) {}
}
