package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.Min;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeRequest;
import org.sunder.airframe.Airframes;
import org.sunder.persistence.DurableTransactions;
import org.sunder.web.Created;
import org.sunder.web.Cursor;
import org.sunder.web.EntityTags;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** Airframes over HTTP. */
@RestController
@RequestMapping("/api/airframes")
@Tag(name = "Airframes")
class AirframeController {

    private final Airframes airframes;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    AirframeController(Airframes airframes, IdempotentCreation creation, DurableTransactions transactions) {
        this.airframes = airframes;
        this.creation = creation;
        this.transactions = transactions;
    }

    @PostMapping
    @Operation(
            operationId = "createAirframe",
            summary = "Enter an airframe",
            description = "Enters a rocket as built. Its joints are added to it afterwards.")
    @ApiResponse(
            responseCode = "201",
            description = "The airframe was entered.",
            content = @Content(schema = @Schema(implementation = AirframeView.class)))
    ResponseEntity<Object> create(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody AirframeRequest body) {
        return creation.create("createAirframe", key, body, () -> {
            Airframe airframe = airframes.enter(body.details());
            return new Created(
                    "/api/airframes/" + airframe.id(), EntityTags.of(airframe.version()), AirframeView.of(airframe));
        });
    }

    @GetMapping
    @Operation(
            operationId = "listAirframes",
            summary = "List airframes",
            description =
                    "The airframes in use, newest first. Those put away are left out; putAway=true lists them alone.")
    ResponseEntity<Page<AirframeView>> list(
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor,
            @Parameter(description = "Those put away in place of those in use.", example = "false")
                    @RequestParam(defaultValue = "false")
                    boolean putAway) {
        int size = Math.min(limit, Page.MOST);
        Cursor from = Cursor.decode(cursor);
        return Page.of(
                        putAway ? airframes.putAway(from, size) : airframes.page(from, size),
                        size,
                        airframe -> new Cursor(airframe.createdAt(), airframe.id()).encoded(),
                        AirframeView::of)
                .answer();
    }

    @GetMapping("/{id}")
    @Operation(
            operationId = "getAirframe",
            summary = "Read an airframe",
            description = "One airframe with its ETag; archived ones can still be read.")
    ResponseEntity<AirframeView> get(@PathVariable UUID id) {
        return answer(airframes.get(id));
    }

    @PutMapping("/{id}")
    @Operation(
            operationId = "replaceAirframe",
            summary = "Change an airframe",
            description = "Replaces what is said about an airframe. Needs If-Match with the ETag that was read.")
    ResponseEntity<AirframeView> replace(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody AirframeRequest body) {
        return answer(transactions.commit(() -> airframes.change(id, EntityTags.matching(ifMatch), body.details())));
    }

    @DeleteMapping("/{id}")
    @Operation(
            operationId = "archiveAirframe",
            summary = "Archive an airframe",
            description = "Puts an airframe away. Its log stays and still teaches the fleet. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The airframe was archived.")
    ResponseEntity<Void> archive(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> airframes.archive(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }

    @PostMapping("/{id}/bring-back")
    @Operation(
            operationId = "bringBackAirframe",
            summary = "Bring an airframe back",
            description = "Takes an archived airframe back into use as it was. Asked again it changes nothing.")
    ResponseEntity<AirframeView> bringBack(@PathVariable UUID id) {
        return answer(transactions.commit(() -> airframes.bringBack(id)));
    }

    private static ResponseEntity<AirframeView> answer(Airframe airframe) {
        return ResponseEntity.ok().eTag(EntityTags.of(airframe.version())).body(AirframeView.of(airframe));
    }
}
