package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Fits;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.LoadOutSheet;
import org.sunder.airframe.LoadOuts;
import org.sunder.airframe.UnitSystem;
import org.sunder.persistence.DurableTransactions;
import org.sunder.web.Created;
import org.sunder.web.EntityTags;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** Load-outs and whether they fit, over HTTP. */
@RestController
@Tag(name = "Load-outs")
class LoadOutController {

    private final LoadOuts loadOuts;
    private final Fits fits;
    private final Airframes airframes;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    LoadOutController(
            LoadOuts loadOuts,
            Fits fits,
            Airframes airframes,
            IdempotentCreation creation,
            DurableTransactions transactions) {
        this.loadOuts = loadOuts;
        this.fits = fits;
        this.airframes = airframes;
        this.creation = creation;
        this.transactions = transactions;
    }

    @PostMapping("/api/airframes/{id}/load-outs")
    @Operation(
            operationId = "createLoadOut",
            summary = "Add a load-out to an airframe",
            description =
                    "Describes what is installed for a flight: motor case, gear, recovery parts. It may be one that"
                            + " does not fit; that is what the fit tells.")
    @ApiResponse(
            responseCode = "201",
            description = "The load-out was added.",
            content = @Content(schema = @Schema(implementation = LoadOutView.class)))
    ResponseEntity<Object> create(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody LoadOutSheet body) {
        return creation.create(IdempotentCreation.scope("createLoadOut", id), key, body, () -> {
            InstalledLoadOut loadOut = loadOuts.add(id, body);
            return new Created(
                    "/api/load-outs/" + loadOut.id(), EntityTags.of(loadOut.version()), LoadOutView.of(loadOut));
        });
    }

    @GetMapping("/api/airframes/{id}/load-outs")
    @Operation(
            operationId = "listLoadOuts",
            summary = "List the load-outs of an airframe",
            description = "All of them, oldest first.")
    Page<LoadOutView> list(@PathVariable UUID id) {
        return new Page<>(loadOuts.of(id).stream().map(LoadOutView::of).toList(), null);
    }

    @GetMapping("/api/load-outs/{id}")
    @Operation(operationId = "getLoadOut", summary = "Read a load-out", description = "One load-out with its ETag.")
    ResponseEntity<LoadOutView> get(@PathVariable UUID id) {
        return answer(loadOuts.get(id));
    }

    @PutMapping("/api/load-outs/{id}")
    @Operation(
            operationId = "replaceLoadOut",
            summary = "Change a load-out",
            description = "Replaces a load-out. Needs If-Match with the ETag that was read.")
    ResponseEntity<LoadOutView> replace(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody LoadOutSheet body) {
        return answer(transactions.commit(() -> loadOuts.change(id, EntityTags.matching(ifMatch), body)));
    }

    @DeleteMapping("/api/load-outs/{id}")
    @Operation(
            operationId = "removeLoadOut",
            summary = "Remove a load-out",
            description = "Removes a load-out; no setup or test depends on it. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The load-out was removed.")
    ResponseEntity<Void> remove(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> loadOuts.remove(id, EntityTags.matching(ifMatch)));
        return ResponseEntity.noContent().build();
    }

    @GetMapping("/api/airframes/{id}/fit")
    @Operation(
            operationId = "getFit",
            summary = "Whether the load-outs fit",
            description = "For the compartment of each joint and each load-out: what fits, what is left, worst case"
                    + " first, and what it does to the joint's free volume and handbook charge.")
    AirframeFitView fit(
            @PathVariable UUID id,
            @Parameter(description = "Units of the answer; the airframe's where not given.")
                    @RequestParam(required = false)
                    @Nullable UnitSystem units) {
        Airframe airframe = airframes.get(id);
        Display display = new Display(units == null ? airframe.units() : units);
        return AirframeFitView.of(airframe, fits.of(id), display);
    }

    private static ResponseEntity<LoadOutView> answer(InstalledLoadOut loadOut) {
        return ResponseEntity.ok().eTag(EntityTags.of(loadOut.version())).body(LoadOutView.of(loadOut));
    }
}
