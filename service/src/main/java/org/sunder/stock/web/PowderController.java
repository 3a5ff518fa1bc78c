package org.sunder.stock.web;

import io.swagger.v3.oas.annotations.Operation;
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
import org.sunder.persistence.DurableTransactions;
import org.sunder.stock.PowderRequest;
import org.sunder.stock.Powders;
import org.sunder.stock.StockPowder;
import org.sunder.web.Created;
import org.sunder.web.Cursor;
import org.sunder.web.EntityTags;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** Powders over HTTP. */
@RestController
@RequestMapping("/api/powders")
@Tag(name = "Stock")
class PowderController {

    private final Powders powders;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    PowderController(Powders powders, IdempotentCreation creation, DurableTransactions transactions) {
        this.powders = powders;
        this.creation = creation;
        this.transactions = transactions;
    }

    @PostMapping
    @Operation(
            operationId = "createPowder",
            summary = "Enter a powder",
            description = "Enters a powder or a lot of one, for setups to name. A new lot starts with a wider"
                    + " uncertainty than the standard powder.")
    @ApiResponse(
            responseCode = "201",
            description = "The powder was entered.",
            content = @Content(schema = @Schema(implementation = PowderView.class)))
    ResponseEntity<Object> create(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody PowderRequest body) {
        return creation.create("createPowder", key, body, () -> {
            StockPowder powder = powders.enter(body.details());
            return new Created("/api/powders/" + powder.id(), EntityTags.of(powder.version()), PowderView.of(powder));
        });
    }

    @GetMapping
    @Operation(
            operationId = "listPowders",
            summary = "List powders",
            description = "The powders in use, newest first; the standard fine-grain black powder comes last.")
    ResponseEntity<Page<PowderView>> list(
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor) {
        int size = Math.min(limit, Page.MOST);
        return Page.of(
                        powders.page(Cursor.decode(cursor), size),
                        size,
                        powder -> new Cursor(powder.createdAt(), powder.id()).encoded(),
                        PowderView::of)
                .answer();
    }

    @GetMapping("/{id}")
    @Operation(
            operationId = "getPowder",
            summary = "Read a powder",
            description = "One powder with its ETag; archived ones can still be read.")
    ResponseEntity<PowderView> get(@PathVariable UUID id) {
        return answer(powders.get(id));
    }

    @PutMapping("/{id}")
    @Operation(
            operationId = "replacePowder",
            summary = "Change a powder",
            description = "Replaces what is said about a powder. Setups that named it keep the powder force that it had"
                    + " when they came into force. Needs If-Match with the ETag that was read.")
    ResponseEntity<PowderView> replace(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody PowderRequest body) {
        return answer(transactions.commit(() -> powders.change(id, EntityTags.matching(ifMatch), body.details())));
    }

    @DeleteMapping("/{id}")
    @Operation(
            operationId = "archivePowder",
            summary = "Archive a powder",
            description = "Puts a powder away and gives its name back. Setups that named it stay as they are. Needs"
                    + " If-Match.")
    @ApiResponse(responseCode = "204", description = "The powder was archived.")
    ResponseEntity<Void> archive(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> powders.archive(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }

    private static ResponseEntity<PowderView> answer(StockPowder powder) {
        return ResponseEntity.ok().eTag(EntityTags.of(powder.version())).body(PowderView.of(powder));
    }
}
