package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.Loads;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.quantity.Length;
import org.sunder.problem.ProblemException;
import org.sunder.web.QuantityParameters;

/** What measured separations asked of harness and bulkheads. */
@RestController
@Tag(name = "Advice")
class LoadsController {

    private final Loads loads;

    LoadsController(Loads loads) {
        this.loads = loads;
    }

    @GetMapping("/api/joints/{id}/loads")
    @Operation(
            operationId = "getLoads",
            summary = "What the measured separations asked of harness and bulkheads",
            description =
                    "Each counted separation whose speed was measured: beside it what the formula predicts, the energy"
                            + " that the harness takes, and the pressure that such a speed takes. With the stretch of the harness also its"
                            + " peak load. A warning stands where what was stated of harness or structure is passed.")
    LoadsView loads(
            @PathVariable UUID id,
            @Parameter(description = "How far the harness lengthens at its limit, 1 mm to 100 m, as in 80 mm.")
                    @RequestParam(required = false)
                    @Nullable String stretch,
            @Parameter(description = "Units of the answer; the airframe's where not given.")
                    @RequestParam(required = false)
                    @Nullable UnitSystem units) {
        Length given = stretch(stretch);
        Loads.Measured measured = loads.at(id);
        return LoadsView.of(measured, given, new Display(units == null ? measured.units() : units));
    }

    private static @Nullable Length stretch(@Nullable String text) {
        Length stretch = QuantityParameters.findLength("stretch", text).orElse(null);
        if (stretch != null && !HarnessShock.STRETCH.contains(stretch.metres())) {
            throw ProblemException.invalid(
                    "stretch", String.valueOf(text), "no harness stretches so", HarnessShock.STRETCH.text());
        }
        return stretch;
    }
}
