package org.sunder.checks;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.charge.JointPhysics;

/** A setup before it is stored, over HTTP. */
@RestController
@RequestMapping("/api/checks/setup")
@Tag(name = "Checks")
class SetupChecks {

    private final SetupPhysics physics;

    SetupChecks(SetupPhysics physics) {
        this.physics = physics;
    }

    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "checkSetup",
            summary = "What a setup comes to",
            description =
                    "Free volume, retention, threshold pressure and handbook charge of a setup, or everything that"
                            + " is wrong with it. Nothing is stored. Accept image/svg+xml gives the compartment in section.")
    SetupCheckView check(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody SetupCheckRequest body) {
        SetupSheet sheet = body.setup();
        return SetupCheckView.of(of(sheet), Measure.of(sheet), new Display(units));
    }

    @Hidden
    @PostMapping(produces = "image/svg+xml")
    String picture(@RequestParam(defaultValue = "metric") UnitSystem units, @RequestBody SetupCheckRequest body) {
        return SectionPicture.of(of(body.setup()), new Display(units));
    }

    private JointPhysics of(SetupSheet sheet) {
        return physics.of(physics.resolve(sheet, "/setup"), "/setup");
    }
}
