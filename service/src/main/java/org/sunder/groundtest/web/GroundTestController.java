package org.sunder.groundtest.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.Min;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTestView;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.Occasion;
import org.sunder.web.Cursor;
import org.sunder.web.Page;

/** Reading the log over HTTP. */
@RestController
@Tag(name = "Ground tests")
class GroundTestController {

    private final GroundTests tests;

    GroundTestController(GroundTests tests) {
        this.tests = tests;
    }

    @GetMapping("/api/joints/{id}/ground-tests")
    @Operation(
            operationId = "listGroundTests",
            summary = "List the ground tests of a joint",
            description = "Newest first; void ones too, marked.")
    ResponseEntity<Page<GroundTestView>> list(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor) {
        return page(id, Occasion.GROUND, limit, cursor);
    }

    @GetMapping("/api/joints/{id}/flight-events")
    @Operation(
            operationId = "listFlightEvents",
            summary = "List the flight events of a joint",
            description = "What the joint did in flight, newest first.")
    ResponseEntity<Page<GroundTestView>> flights(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor) {
        return page(id, Occasion.FLIGHT, limit, cursor);
    }

    private ResponseEntity<Page<GroundTestView>> page(UUID id, Occasion occasion, int limit, @Nullable String cursor) {
        int size = Math.min(limit, Page.MOST);
        return Page.of(
                        tests.page(id, occasion, Cursor.decode(cursor), size),
                        size,
                        test -> new Cursor(test.report().firedAt().toInstant(), test.id()).encoded(),
                        GroundTestView::of)
                .answer();
    }

    @GetMapping("/api/ground-tests/{id}")
    @Operation(
            operationId = "getGroundTest",
            summary = "Read a ground test",
            description = "One entry of the log with its marks.")
    ResponseEntity<GroundTestView> get(@PathVariable UUID id) {
        GroundTest test = tests.get(id);
        return ResponseEntity.ok().eTag(GroundTestView.tag(test)).body(GroundTestView.of(test));
    }
}
