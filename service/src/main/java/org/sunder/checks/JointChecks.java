package org.sunder.checks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Display;
import org.sunder.airframe.EngineFaults;
import org.sunder.airframe.Measure;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.SheetResolution;
import org.sunder.airframe.SheetTranslation;
import org.sunder.airframe.UnitSystem;
import org.sunder.checks.RetentionView.ShoulderView;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.flight.PinsInFlight;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.Retention;
import org.sunder.engine.physics.retention.ShoulderCheck;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Pressure;

/** What holds a joint, on the ground and in flight, over HTTP. */
@RestController
@RequestMapping("/api/checks")
@Tag(name = "Checks")
class JointChecks {

    private final SheetResolution resolution;
    private final SetupPhysics physics;

    JointChecks(SheetResolution resolution, SetupPhysics physics) {
        this.resolution = resolution;
        this.physics = physics;
    }

    @PostMapping("/retention")
    @Operation(
            operationId = "checkRetention",
            summary = "What pins and fit hold",
            description = "The force that keeps a joint closed, by the pins' root area or their pull tests, with the"
                    + " threshold pressure and the shoulder where their sizes are given.")
    RetentionView retention(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody RetentionRequest body) {
        Display display = new Display(units);
        return EngineFaults.named(SheetTranslation::pathInSheet, () -> {
            SheetTranslation sheets = new SheetTranslation();
            List<PinSet> pins = sheets.pins(resolution.resolve(body.pins()));
            sheets.throwIfAny();
            Retention retention =
                    Retention.ofPins(pins, SheetTranslation.fit(body.fitForce(), body.fitForceUncertainty()));
            Pressure threshold = body.innerDiameter() == null
                    ? null
                    : display.pressure(retention.mean() / area(body.innerDiameter()));
            return RetentionView.of(retention, pins, threshold, shoulder(body, pins), display);
        });
    }

    @PostMapping("/pins-in-flight")
    @Operation(
            operationId = "checkPinsInFlight",
            summary = "Whether the pins hold in flight",
            description = "Trapped air, drag separation at burnout and the jerk of another event, each with the margin"
                    + " the pins have against it, and the smallest count that holds and can still be broken.")
    PinsInFlightView pinsInFlight(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody PinsInFlightRequest body) {
        SetupSheet setup = physics.resolve(body.setup(), "/setup");
        BigDecimal margin = body.margin() == null ? BigDecimal.valueOf(PinsInFlight.DEFAULT_MARGIN) : body.margin();
        UnaryOperator<String> inBody = path -> path.startsWith("flight") || path.equals("margin")
                ? FlightSheet.pathInBody(path)
                : "setup." + SheetTranslation.pathInSheet(path);
        PinsInFlight pins = EngineFaults.named(
                inBody,
                () -> PinsInFlight.of(
                        SheetTranslation.translate(setup), body.flight().flight(), margin.doubleValue()));
        return PinsInFlightView.of(pins, margin, new Display(units), Measure.of(setup));
    }

    private static @Nullable ShoulderView shoulder(RetentionRequest body, List<PinSet> pins) {
        if (body.shoulder() == null) {
            return null;
        }
        if (body.innerDiameter() == null) {
            throw new UnsoundSetupException(
                    List.of(new SetupFault("innerDiameter", "", "needed to judge the shoulder", "a value")));
        }
        int count = pins.stream().mapToInt(PinSet::count).sum();
        return ShoulderView.of(ShoulderCheck.of(body.innerDiameter(), body.shoulder(), count));
    }

    private static double area(Length diameter) {
        if (!SetupBounds.INNER_DIAMETER.contains(diameter.metres())) {
            throw new UnsoundSetupException(List.of(new SetupFault(
                    "innerDiameter",
                    diameter.value() + " " + diameter.unit(),
                    "out of bounds",
                    SetupBounds.INNER_DIAMETER.text())));
        }
        return Math.PI / 4 * diameter.metres() * diameter.metres();
    }
}
