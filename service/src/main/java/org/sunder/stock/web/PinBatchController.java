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
import org.sunder.stock.PinBatch;
import org.sunder.stock.PinBatchRequest;
import org.sunder.stock.PinBatches;
import org.sunder.web.Created;
import org.sunder.web.Cursor;
import org.sunder.web.EntityTags;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** PinBatches over HTTP. */
@RestController
@RequestMapping("/api/pin-batches")
@Tag(name = "Stock")
class PinBatchController {

    private final PinBatches batches;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    PinBatchController(PinBatches batches, IdempotentCreation creation, DurableTransactions transactions) {
        this.batches = batches;
        this.creation = creation;
        this.transactions = transactions;
    }

    @PostMapping
    @Operation(
            operationId = "createPinBatch",
            summary = "Enter a batch of pins",
            description = "Enters a batch of shear pins of one thread. Its pull tests are added one by one.")
    @ApiResponse(
            responseCode = "201",
            description = "The batch was entered.",
            content = @Content(schema = @Schema(implementation = PinBatchView.class)))
    ResponseEntity<Object> create(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody PinBatchRequest body) {
        return creation.create("createPinBatch", key, body, () -> {
            PinBatch batch = batches.enter(body.details());
            return new Created(
                    "/api/pin-batches/" + batch.id(), EntityTags.of(batch.version()), PinBatchView.of(batch));
        });
    }

    @GetMapping
    @Operation(
            operationId = "listPinBatches",
            summary = "List batches",
            description = "The batches in use, newest first, with their pull tests.")
    ResponseEntity<Page<PinBatchView>> list(
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor) {
        int size = Math.min(limit, Page.MOST);
        return Page.of(
                        batches.page(Cursor.decode(cursor), size),
                        size,
                        batch -> new Cursor(batch.createdAt(), batch.id()).encoded(),
                        PinBatchView::of)
                .answer();
    }

    @GetMapping("/{id}")
    @Operation(
            operationId = "getPinBatch",
            summary = "Read a batch",
            description = "One batch with its ETag; archived ones can still be read.")
    ResponseEntity<PinBatchView> get(@PathVariable UUID id) {
        return answer(batches.get(id));
    }

    @PutMapping("/{id}")
    @Operation(
            operationId = "replacePinBatch",
            summary = "Change a batch",
            description = "Replaces what is said about a batch; its pull tests stay. Needs If-Match with the ETag that"
                    + " was read.")
    ResponseEntity<PinBatchView> replace(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody PinBatchRequest body) {
        return answer(transactions.commit(() -> batches.change(id, EntityTags.matching(ifMatch), body.details())));
    }

    @DeleteMapping("/{id}")
    @Operation(
            operationId = "archivePinBatch",
            summary = "Archive a batch",
            description = "Puts a batch away. Setups that named it stay as they are. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The batch was archived.")
    ResponseEntity<Void> archive(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> batches.archive(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }

    @PostMapping("/{id}/pull-tests")
    @Operation(
            operationId = "addPullTest",
            summary = "Add a pull test to a batch",
            description = "Adds the break force of one pin. From two on the batch has a mean and a scatter, and a setup"
                    + " may name it; setups that did before keep what it was then.")
    @ApiResponse(
            responseCode = "201",
            description = "The pull test was added; the answer is the batch.",
            content = @Content(schema = @Schema(implementation = PinBatchView.class)))
    ResponseEntity<Object> pull(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody PullTestRequest body) {
        return creation.create(IdempotentCreation.scope("addPullTest", id), key, body, () -> {
            PinBatch batch = batches.pull(id, body.force());
            return new Created("/api/pin-batches/" + id, EntityTags.of(batch.version()), PinBatchView.of(batch));
        });
    }

    @PostMapping("/{id}/pull-tests/{number}/leave-out")
    @Operation(
            operationId = "leaveOutPullTest",
            summary = "Leave a pull test out of its batch",
            description = "For a pull that does not belong: another pin, a slip of the hand. It stays in the list, and"
                    + " strength and scatter of the batch are those of the others, of which two at least must be left."
                    + " Asked again it changes nothing. Setups in force keep what they stored.")
    ResponseEntity<PinBatchView> leaveOut(@PathVariable UUID id, @PathVariable int number) {
        return answer(transactions.commit(() -> batches.leaveOut(id, number, true)));
    }

    @PostMapping("/{id}/pull-tests/{number}/take-back")
    @Operation(
            operationId = "takeBackPullTest",
            summary = "Take a pull test back into its batch",
            description = "It counts again. Asked again it changes nothing. Setups in force keep what they stored.")
    ResponseEntity<PinBatchView> takeBack(@PathVariable UUID id, @PathVariable int number) {
        return answer(transactions.commit(() -> batches.leaveOut(id, number, false)));
    }

    @DeleteMapping("/{id}/pull-tests/{number}")
    @Operation(
            operationId = "removePullTest",
            summary = "Delete a pull test of a batch",
            description =
                    "For one entered by mistake: it goes for good, and those after it move up. One that was pulled"
                            + " and does not belong is better left out. Two at least stay that count, once there are two. Needs"
                            + " If-Match.")
    ResponseEntity<PinBatchView> removePull(
            @PathVariable UUID id,
            @PathVariable int number,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        return answer(transactions.commit(() -> batches.removePull(id, number, EntityTags.matching(ifMatch))));
    }

    private static ResponseEntity<PinBatchView> answer(PinBatch batch) {
        return ResponseEntity.ok().eTag(EntityTags.of(batch.version())).body(PinBatchView.of(batch));
    }
}
