package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.access.CurrentFlyer;
import org.sunder.advice.LogDraft;
import org.sunder.advice.TestLogging;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTestView;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.ReasonRequest;
import org.sunder.persistence.DurableTransactions;
import org.sunder.persistence.FleetWrites;
import org.sunder.web.Created;
import org.sunder.web.IdempotentCreation;

/** Logging over HTTP: every answer says what was learned and what to do next. */
@RestController
@Tag(name = "Ground tests")
class LoggingController {

    private final TestLogging logging;
    private final IdempotentCreation creation;
    private final FleetWrites writes;
    private final DurableTransactions transactions;
    private final CurrentFlyer flyer;

    LoggingController(
            TestLogging logging,
            IdempotentCreation creation,
            FleetWrites writes,
            DurableTransactions transactions,
            CurrentFlyer flyer) {
        this.logging = logging;
        this.creation = creation;
        this.writes = writes;
        this.transactions = transactions;
        this.flyer = flyer;
    }

    @PostMapping("/api/joints/{id}/ground-tests")
    @Operation(
            operationId = "logGroundTest",
            summary = "Log a ground test",
            description = "Takes a report into the log. Send an Idempotency-Key, so that a report sent twice is stored"
                    + " once. The answer carries the new correction and the next charge.")
    @ApiResponse(
            responseCode = "201",
            description = "The test is in the log.",
            content = @Content(schema = @Schema(implementation = LoggedTestView.class)))
    ResponseEntity<Object> log(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody TestRequest body) {
        return log("logGroundTest", id, Occasion.GROUND, key, body);
    }

    @PostMapping("/api/joints/{id}/flight-events")
    @Operation(
            operationId = "logFlightEvent",
            summary = "Log what a joint did in flight",
            description =
                    "A flight counts as a trial too. It is read, voided and restored like a ground test, but a charge"
                            + " to fly must still have parted the setup on the ground.")
    @ApiResponse(
            responseCode = "201",
            description = "The event is in the log.",
            content = @Content(schema = @Schema(implementation = LoggedTestView.class)))
    ResponseEntity<Object> logFlight(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody TestRequest body) {
        return log("logFlightEvent", id, Occasion.FLIGHT, key, body);
    }

    @PostMapping("/api/ground-tests/{id}/void")
    @Operation(
            operationId = "voidGroundTest",
            summary = "Take a test out of the fit",
            description =
                    "For a test that says nothing about the joint: the igniter failed, the charge did not burn, a pin"
                            + " was missing. It stays in the log with the reason.")
    ResponseEntity<LoggedTestView> takeOut(@PathVariable UUID id, @RequestBody ReasonRequest body) {
        return mark(id, true, body.reason());
    }

    @PostMapping("/api/ground-tests/{id}/unvoid")
    @Operation(
            operationId = "unvoidGroundTest",
            summary = "Take a test back into the fit",
            description = "Lifts a void; both stay in the log with their times.")
    ResponseEntity<LoggedTestView> takeBack(@PathVariable UUID id, @RequestBody ReasonRequest body) {
        return mark(id, false, body.reason());
    }

    private ResponseEntity<Object> log(
            String operation, UUID joint, Occasion occasion, @Nullable String key, TestRequest body) {
        return creation.createFromFleet(IdempotentCreation.scope(operation, joint), key, body, () -> {
            LogDraft draft = logging.draft(joint, body.setupRevision(), occasion, body.report());
            GroundTest test = draft.test();
            Created answer = new Created("/api/ground-tests/" + test.id(), GroundTestView.tag(test), view(draft));
            return () -> {
                logging.add(draft);
                return answer;
            };
        });
    }

    private ResponseEntity<LoggedTestView> mark(UUID id, boolean voided, String reason) {
        return ResponseEntity.ok(writes.inTurn(flyer.id(), () -> {
            LogDraft draft = logging.mark(id, voided, reason);
            LoggedTestView view = view(draft);
            transactions.run(() -> logging.addMark(draft));
            return view;
        }));
    }

    private static LoggedTestView view(LogDraft draft) {
        return AdviceViews.logged(draft.test(), draft.next());
    }
}
