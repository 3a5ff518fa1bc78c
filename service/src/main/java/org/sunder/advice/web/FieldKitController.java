package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;
import org.sunder.advice.FieldKit;
import org.sunder.advice.FieldKits;

/** What a phone takes to the field, in one answer. */
@RestController
@Tag(name = "Advice")
class FieldKitController {

    private static final String DEPTHS = "0 to 4";
    private static final String COUNTS = "1 to 100";

    private final FieldKits kits;

    FieldKitController(FieldKits kits) {
        this.kits = kits;
    }

    @GetMapping("/api/field-kit")
    @Operation(
            operationId = "getFieldKit",
            summary = "All that a phone needs without network",
            description =
                    "Of each joint what to do next and why, the plan from there on, its last firings by all phones"
                            + " and what to mind of its setup, newest joints first. Bounded by limit; left says how many joints"
                            + " more there are. The ETag stands for as long as the fleet does: send it as If-None-Match, and an"
                            + " unchanged kit is a 304 that computes nothing.")
    @Nullable ResponseEntity<FieldKitView> kit(
            @Parameter(description = "Only this joint.") @RequestParam(required = false) @Nullable UUID joint,
            @Parameter(description = "Firings to look ahead; 0 leaves the plans out and answers sooner.", example = "4")
                    @RequestParam(defaultValue = "4")
                    @Min(value = 0, message = DEPTHS) @Max(value = 4, message = DEPTHS) int depth,
            @Parameter(description = "How many joints at most.", example = "40")
                    @RequestParam(defaultValue = "40")
                    @Min(value = 1, message = COUNTS) @Max(value = 100, message = COUNTS) int limit,
            WebRequest request) {
        return kits.now(
                new FieldKit.Extent(joint, depth, limit),
                kit -> request.checkNotModified(kit.tag())
                        ? null
                        : ResponseEntity.ok()
                                .eTag(kit.tag())
                                .body(FieldKitView.of(kit.packing().get())));
    }
}
