package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.FleetCorrections;

/** The fleet over HTTP. */
@RestController
@Tag(name = "Advice")
class FleetController {

    private final FleetCorrections corrections;

    FleetController(FleetCorrections corrections) {
        this.corrections = corrections;
    }

    @GetMapping("/api/fleet/correction")
    @Operation(
            operationId = "getFleetCorrection",
            summary = "What the fleet teaches a new airframe",
            description =
                    "The correction that a new airframe starts from, beside the one of a flyer with no tests, and the"
                            + " correction of every joint.")
    FleetView correction() {
        return FleetView.of(corrections.explained());
    }
}
