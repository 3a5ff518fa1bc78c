package org.sunder.access.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyer;
import org.sunder.access.Flyers;
import org.sunder.access.IssuedKey;
import org.sunder.access.KeyGiving;
import org.sunder.web.Created;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** Flyers and their keys, for whoever looks after the service. */
@RestController
@Tag(name = "Access")
class FlyerController {

    private final Flyers flyers;
    private final AccessKeys keys;
    private final KeyGiving giving;
    private final IdempotentCreation creation;

    FlyerController(Flyers flyers, AccessKeys keys, KeyGiving giving, IdempotentCreation creation) {
        this.flyers = flyers;
        this.keys = keys;
        this.giving = giving;
        this.creation = creation;
    }

    @GetMapping("/api/flyers")
    @Operation(
            operationId = "listFlyers",
            summary = "List the flyers",
            description = "All flyers of this service, oldest first. Needs an admin key.")
    Page<FlyerView> list() {
        return new Page<>(flyers.all().stream().map(FlyerView::of).toList(), null);
    }

    @PostMapping("/api/flyers")
    @Operation(
            operationId = "createFlyer",
            summary = "Enter a flyer",
            description = "Enters a person with airframes of their own, which no other flyer sees. Give them a key"
                    + " next. Needs an admin key.")
    @ApiResponse(
            responseCode = "201",
            description = "The flyer was entered.",
            content = @Content(schema = @Schema(implementation = FlyerView.class)))
    ResponseEntity<Object> create(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody FlyerRequest body) {
        return creation.create("createFlyer", key, body, () -> {
            Flyer flyer = flyers.enter(body.name());
            return new Created("/api/flyers/" + flyer.id(), null, FlyerView.of(flyer));
        });
    }

    @GetMapping("/api/flyers/{id}/access-keys")
    @Operation(
            operationId = "listFlyerKeys",
            summary = "List a flyer's access keys",
            description = "All of them, newest first; never the keys themselves. Needs an admin key.")
    Page<KeyView> keys(@PathVariable UUID id) {
        return new Page<>(keys.of(flyers.get(id).id()).stream().map(KeyView::of).toList(), null);
    }

    @PostMapping("/api/flyers/{id}/access-keys")
    @Operation(
            operationId = "createFlyerKey",
            summary = "Give a flyer an access key",
            description =
                    "The answer shows the key, once. Repeated with the same Idempotency-Key no second one is made,"
                            + " and the answer, 409, names the first. Needs an admin key.")
    @ApiResponse(
            responseCode = "201",
            description = "The key was made.",
            content = @Content(schema = @Schema(implementation = KeyView.class)))
    ResponseEntity<Object> give(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody KeyRequest body) {
        return creation.create(IdempotentCreation.scope("createFlyerKey", id), key, body, () -> {
            IssuedKey made = giving.give(flyers.get(id).id(), body.name(), body.scope(), body.expiresAt());
            return KeyView.created("/api/flyers/" + id + "/access-keys/", made);
        });
    }

    @DeleteMapping("/api/flyers/{id}/access-keys/{key}")
    @Operation(
            operationId = "revokeFlyerKey",
            summary = "Revoke a flyer's access key",
            description = "It is refused from now on. Needs an admin key.")
    @ApiResponse(responseCode = "204", description = "The key was revoked.")
    ResponseEntity<Void> revoke(@PathVariable UUID id, @PathVariable UUID key) {
        giving.takeBack(id, key);
        return ResponseEntity.noContent().build();
    }
}
