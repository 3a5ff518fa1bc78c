package org.sunder.checks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Display;
import org.sunder.airframe.EngineFaults;
import org.sunder.airframe.UnitSystem;
import org.sunder.checks.SpeedRequest.HarnessSheet;
import org.sunder.checks.SpeedView.ShockView;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.MeasuredSpeed;
import org.sunder.engine.physics.flight.BayVents;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.problem.ProblemException;

/** Vents to drill and speeds that were seen, over HTTP. */
@RestController
@RequestMapping("/api/checks")
@Tag(name = "Checks")
class FieldChecks {

    private static final int USUAL_HOLES = 3;
    private static final Length SEA_LEVEL = new Length(BigDecimal.ZERO, LengthUnit.METRE);

    @PostMapping("/vents")
    @Operation(
            operationId = "checkVents",
            summary = "Vent holes of an electronics bay",
            description = "The rule of practice, drills that come near it, and how far the pressure inside lags behind"
                    + " at the ascent speed.")
    VentsView vents(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody VentsRequest body) {
        BayVents vents = EngineFaults.named(
                FieldChecks::ventPath,
                () -> BayVents.of(
                        body.bayVolume(),
                        body.holes() == null ? USUAL_HOLES : body.holes(),
                        body.ascentSpeed(),
                        body.siteElevation() == null ? SEA_LEVEL : body.siteElevation()));
        return VentsView.of(vents, new Display(units));
    }

    @PostMapping("/speed")
    @Operation(
            operationId = "checkSpeed",
            summary = "The speed of a separation that was seen",
            description =
                    "From frames of a film or from a throw, with its uncertainty; with the harness described, also"
                            + " the shock it sees.")
    SpeedView speed(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody SpeedRequest body) {
        Display display = new Display(units);
        MeasuredSpeed measured = measured(body);
        return SpeedView.of(measured, shock(measured, body.harness(), display), display);
    }

    private static MeasuredSpeed measured(SpeedRequest body) {
        SpeedRequest.VideoSheet video = body.video();
        SpeedRequest.ThrowSheet thrown = body.thrown();
        if (video != null && thrown == null) {
            return EngineFaults.named(
                    path -> "video." + path,
                    () -> MeasuredSpeed.ofFrames(
                            video.distance(),
                            video.frames(),
                            video.framesPerSecond().doubleValue()));
        }
        if (thrown != null && video == null) {
            return EngineFaults.named(
                    path -> "thrown." + path, () -> MeasuredSpeed.ofThrow(thrown.distance(), thrown.height()));
        }
        String given = video == null ? "neither" : "both";
        throw ProblemException.invalid("", given, "either video or thrown is needed, not both", "video or thrown");
    }

    private static @Nullable ShockView shock(MeasuredSpeed measured, @Nullable HarnessSheet harness, Display display) {
        if (harness == null) {
            return null;
        }
        HarnessShock shock = EngineFaults.named(
                path -> "harness." + path,
                () -> HarnessShock.of(measured.speed(), harness.forwardMass(), harness.aftMass(), harness.stretch()));
        return ShockView.of(shock, display);
    }

    private static String ventPath(String enginePath) {
        return switch (enginePath) {
            case "bay" -> "bayVolume";
            case "speed" -> "ascentSpeed";
            case "altitude" -> "siteElevation";
            default -> enginePath;
        };
    }
}
