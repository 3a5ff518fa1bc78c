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
import org.sunder.access.CurrentFlyer;
import org.sunder.access.IssuedKey;
import org.sunder.access.KeyGiving;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** A flyer's own keys, over HTTP. */
@RestController
@Tag(name = "Access")
class KeyController {

    private final AccessKeys keys;
    private final KeyGiving giving;
    private final CurrentFlyer flyer;
    private final IdempotentCreation creation;

    KeyController(AccessKeys keys, KeyGiving giving, CurrentFlyer flyer, IdempotentCreation creation) {
        this.keys = keys;
        this.giving = giving;
        this.flyer = flyer;
        this.creation = creation;
    }

    @GetMapping("/api/access-keys")
    @Operation(
            operationId = "listAccessKeys",
            summary = "List your access keys",
            description = "All of them, newest first, revoked ones too; never the keys themselves.")
    Page<KeyView> list() {
        return new Page<>(keys.of(flyer.id()).stream().map(KeyView::of).toList(), null);
    }

    @PostMapping("/api/access-keys")
    @Operation(
            operationId = "createAccessKey",
            summary = "Make an access key",
            description = "The answer shows the key, once. It is kept as a hash only, so an answer that was lost cannot"
                    + " be repeated: with the same Idempotency-Key no second key is made, and the answer, 409, names the"
                    + " first. Revoke that one and make another with a new Idempotency-Key.")
    @ApiResponse(
            responseCode = "201",
            description = "The key was made.",
            content = @Content(schema = @Schema(implementation = KeyView.class)))
    ResponseEntity<Object> create(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody KeyRequest body) {
        return creation.create("createAccessKey", key, body, () -> {
            IssuedKey made = giving.give(flyer.id(), body.name(), body.scope(), body.expiresAt());
            return KeyView.created("/api/access-keys/", made);
        });
    }

    @DeleteMapping("/api/access-keys/{id}")
    @Operation(
            operationId = "revokeAccessKey",
            summary = "Revoke an access key",
            description = "It is refused from now on, and so are the browser sessions opened with it.")
    @ApiResponse(responseCode = "204", description = "The key was revoked.")
    ResponseEntity<Void> revoke(@PathVariable UUID id) {
        giving.takeBack(flyer.id(), id);
        return ResponseEntity.noContent().build();
    }
}
