package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import java.math.BigDecimal;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.Advising;
import org.sunder.advice.Estimates;
import org.sunder.advice.History;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.flight.FlightCase;

/** What physics and log say, over HTTP. */
@RestController
@Tag(name = "Advice")
class AdviceController {

    private final Airframes airframes;
    private final Estimates estimates;
    private final Advising advising;
    private final History history;

    AdviceController(Airframes airframes, Estimates estimates, Advising advising, History history) {
        this.airframes = airframes;
        this.estimates = estimates;
        this.advising = advising;
        this.history = history;
    }

    @GetMapping("/api/joints/{id}/estimate")
    @Operation(
            operationId = "getEstimate",
            summary = "The physics of the setup in force",
            description = "Free volume, area, retention, threshold pressure, handbook charge with its uncertainty, and"
                    + " what the log makes of it. Charges here are estimates, not charges to fly.")
    EstimateView estimate(
            @PathVariable UUID id,
            @Parameter(description = "Units of the answer; the airframe's where not given.")
                    @RequestParam(required = false)
                    @Nullable UnitSystem units) {
        return AdviceViews.estimate(estimates.of(id), display(id, units));
    }

    @GetMapping("/api/joints/{id}/next-charge")
    @Operation(
            operationId = "getNextCharge",
            summary = "What to fire next",
            description = "The main call: fire this much next on the ground, or stop, or change the setup; with the"
                    + " chances of each outcome and what would follow each.")
    NextChargeView nextCharge(
            @PathVariable UUID id,
            @Parameter(description = "Whether to give the numbers behind the choice.", example = "true")
                    @RequestParam(defaultValue = "false")
                    boolean explain,
            @Parameter(
                            description =
                                    "Where the firings are filmed: how good their speeds are, one standard deviation"
                                            + " in percent. The choice then counts on what a film is going to tell.",
                            example = "5")
                    @RequestParam(required = false)
                    @DecimalMin(value = "3", message = "3 to 50") @DecimalMax(value = "50", message = "3 to 50") @Nullable BigDecimal filmed,
            @Parameter(description = "Units of the answer; the airframe's where not given.")
                    @RequestParam(required = false)
                    @Nullable UnitSystem units) {
        NextAdvice advice = filmed == null ? advising.next(id, explain) : advising.filmed(id, explain, filmed);
        return AdviceViews.next(advice, new Display(units == null ? advice.units() : units));
    }

    @GetMapping("/api/joints/{id}/flight-charge")
    @Operation(
            operationId = "getFlightCharge",
            summary = "What to fly",
            description =
                    "Primary and backup charge, how sure the model is, what the tests alone show, and the evidence."
                            + " Refused until a counted test has separated the joint. With the altitudes of site and event"
                            + " the ceiling is lower by the air that a closed compartment still holds.")
    FlightChargeView flightCharge(
            @PathVariable UUID id,
            @Parameter(description = "Chance of separating to aim at.", example = "0.99")
                    @RequestParam(defaultValue = "0.99")
                    @DecimalMin(value = "0.8", message = "0.8 to 0.999") @DecimalMax(value = "0.999", message = "0.8 to 0.999") BigDecimal reliability,
            @Parameter(
                            description =
                                    "Elevation of the site above sea level; sea level where only the event is given.",
                            example = "\"1200 m\"")
                    @RequestParam(required = false)
                    @Nullable String siteElevation,
            @Parameter(
                            description =
                                    "Altitude of the event above sea level, not above the ground; the site's where"
                                            + " only that is given.",
                            example = "\"2400 m\"")
                    @RequestParam(required = false)
                    @Nullable String eventAltitude,
            @Parameter(description = "Units of the pressures; the airframe's where not given.")
                    @RequestParam(required = false)
                    @Nullable UnitSystem units) {
        FlightCase.Climb climb = ClimbParameters.climb(siteElevation, eventAltitude);
        return AdviceViews.flight(
                advising.flight(id, reliability.doubleValue(), climb), reliability, display(id, units));
    }

    @GetMapping("/api/airframes/{id}/history")
    @Operation(
            operationId = "getHistory",
            summary = "Everything that happened to an airframe",
            description = "Setups, tests, voids, and the corrections as they stood then, oldest first.")
    HistoryView history(@PathVariable UUID id) {
        Airframe airframe = airframes.get(id);
        return new HistoryView(
                airframe.id(),
                airframe.name(),
                history.of(id).stream().map(HistoryView.EntryView::of).toList());
    }

    private Display display(UUID jointId, @Nullable UnitSystem units) {
        return new Display(
                units != null
                        ? units
                        : airframes
                                .get(airframes.getJoint(jointId).airframeId())
                                .units());
    }
}
