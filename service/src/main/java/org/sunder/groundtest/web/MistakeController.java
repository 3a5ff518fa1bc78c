package org.sunder.groundtest.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.groundtest.EnteredByMistake;
import org.sunder.persistence.DurableTransactions;
import org.sunder.web.EntityTags;

/** Deleting for good what was entered by mistake and never used, over HTTP. */
@RestController
class MistakeController {

    private final EnteredByMistake mistakes;
    private final DurableTransactions transactions;

    MistakeController(EnteredByMistake mistakes, DurableTransactions transactions) {
        this.mistakes = mistakes;
        this.transactions = transactions;
    }

    @DeleteMapping("/api/joints/{id}")
    @Tag(name = "Joints and setups")
    @Operation(
            operationId = "removeJoint",
            summary = "Delete a joint that was never used",
            description = "For one entered by mistake: it goes for good with its setups and with what load-outs have in"
                    + " it. One that anything was fired at stays, void tests too. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The joint is gone.")
    ResponseEntity<Void> joint(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> mistakes.removeJoint(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }

    @DeleteMapping("/api/airframes/{id}/unused")
    @Tag(name = "Airframes")
    @Operation(
            operationId = "removeAirframe",
            summary = "Delete an airframe that was never used",
            description =
                    "For one entered by mistake: it goes for good with its joints and load-outs. One that anything"
                            + " was fired at stays, void tests too; archive it instead. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The airframe is gone.")
    ResponseEntity<Void> airframe(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> mistakes.removeAirframe(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }
}
