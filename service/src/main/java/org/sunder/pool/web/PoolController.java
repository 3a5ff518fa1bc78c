package org.sunder.pool.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.Min;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.persistence.DurableTransactions;
import org.sunder.pool.PoolChoices;
import org.sunder.pool.PoolFile;
import org.sunder.pool.PoolMaking;
import org.sunder.pool.PoolSnapshot;
import org.sunder.pool.PoolSnapshots;
import org.sunder.pool.PoolUse;
import org.sunder.problem.ProblemException;
import org.sunder.web.Created;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** What other flyers' rockets teach: sharing, snapshots, files. */
@RestController
@Tag(name = "Pool")
class PoolController {

    private static final String SNAPSHOTS = "/api/pool/snapshots";

    private final PoolUse use;
    private final PoolSnapshots snapshots;
    private final PoolMaking making;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    PoolController(
            PoolUse use,
            PoolSnapshots snapshots,
            PoolMaking making,
            IdempotentCreation creation,
            DurableTransactions transactions) {
        this.use = use;
        this.snapshots = snapshots;
        this.making = making;
        this.creation = creation;
        this.transactions = transactions;
    }

    @GetMapping("/api/pool")
    @Operation(
            operationId = "getPool",
            summary = "What you share and use of the pool",
            description =
                    "The pool is what the logs of flyers who share them teach of a rocket not yet tested: how much"
                            + " shots scatter, how wide the band of partial separation is, where handbook charges lie.")
    PoolView pool() {
        return view(use.choices());
    }

    @PutMapping("/api/pool/sharing")
    @Operation(
            operationId = "setSharing",
            summary = "Share your log, or stop",
            description = "Off until switched on; either way it takes effect at the next snapshot. What is shared: the"
                    + " counted tests of your rockets as charge ratios and outcomes, mixed with those of at least four"
                    + " others. What is not: names, notes, times, pictures, setups, and who you are.")
    PoolView share(@RequestBody SharingRequest body) {
        return view(transactions.commit(() -> use.share(body.sharing())));
    }

    @PutMapping("/api/pool/using")
    @Operation(
            operationId = "setUsing",
            summary = "Use the pool, or work without it",
            description =
                    "Switched on, answers rest on the newest snapshot from now on; switched off, on the model's own"
                            + " priors and your own log alone.")
    PoolView use(@RequestBody UsingRequest body) {
        return view(transactions.commit(() -> use.use(body.using())));
    }

    @PostMapping("/api/pool/move")
    @Operation(
            operationId = "moveToNewestPoolSnapshot",
            summary = "Move to the newest snapshot",
            description =
                    "From now on answers rest on it, where the pool is used. Without this they move when a setup is"
                            + " described.")
    PoolView move() {
        return view(transactions.commit(use::move));
    }

    @PostMapping("/api/pool/renew")
    @Operation(
            operationId = "renewPool",
            summary = "Make the next snapshot now",
            description =
                    "The service does so by itself once a day. Refused with 409 where fewer than five flyers share"
                            + " three counted tests each, or where what fewer than three of them share differs from the snapshot"
                            + " before. Needs an admin key.")
    PoolSnapshotView renew() {
        return PoolSnapshotView.of(making.renew());
    }

    @GetMapping(SNAPSHOTS)
    @Operation(
            operationId = "listPoolSnapshots",
            summary = "List the snapshots",
            description = "All of them, newest first: those made here and those taken in.")
    ResponseEntity<Page<PoolSnapshotView>> list(
            @RequestParam(defaultValue = "50") @Min(value = 1, message = "at least 1; more than 200 is cut to 200") int limit,
            @RequestParam(required = false) @Nullable String cursor) {
        int size = Math.min(limit, Page.MOST);
        List<PoolSnapshot> rows = snapshots.before(number(cursor), size + 1);
        return Page.of(rows, size, snapshot -> String.valueOf(snapshot.number()), PoolSnapshotView::of)
                .answer();
    }

    private static int number(@Nullable String cursor) {
        if (cursor == null) {
            return Integer.MAX_VALUE;
        }
        if (!cursor.matches("[1-9][0-9]{0,8}")) {
            throw ProblemException.invalid("cursor", cursor, "this is no cursor of this list", "the cursor of a page");
        }
        return Integer.parseInt(cursor);
    }

    @GetMapping(SNAPSHOTS + "/{number}")
    @Operation(
            operationId = "getPoolSnapshot",
            summary = "A snapshot as a file",
            description = "To be kept, or taken in by another service. It holds no name, no id and no time of a test.")
    ResponseEntity<PoolFile> file(@PathVariable int number) {
        PoolFile file = snapshots.get(number).file();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"pool.json\"")
                .eTag(tag(file))
                .body(file);
    }

    @PostMapping(SNAPSHOTS)
    @Operation(
            operationId = "takeInPoolSnapshot",
            summary = "Take in a snapshot from a file",
            description =
                    "All of it or nothing. It becomes the newest; one that is here already stays under its number. A"
                            + " checksum tells a damaged file, not a forged one: take in what you know the giver of. Whatever it"
                            + " says, one tenth of the model's own priors stays beside it, and every safeguard holds. Needs an"
                            + " admin key; where keys are off, anyone at the machine may.")
    @ApiResponse(
            responseCode = "201",
            description = "The snapshot is here.",
            content = @Content(schema = @Schema(implementation = PoolSnapshotView.class)))
    ResponseEntity<Object> takeIn(
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @Parameter(description = "Who gave the file, in your words.", example = "the club down the road")
                    @RequestParam
                    String givenBy,
            @Parameter(description = "Whether your answers are to rest on it from now on.")
                    @RequestParam(defaultValue = "false")
                    boolean use,
            @RequestBody PoolFile body) {
        return creation.create("takeInPoolSnapshot", key, List.of(givenBy, use, body), () -> {
            PoolSnapshot taken = snapshots.takeIn(body, givenBy);
            if (use) {
                this.use.use(true);
                this.use.move();
            }
            return new Created(SNAPSHOTS + "/" + taken.number(), tag(taken.file()), PoolSnapshotView.of(taken));
        });
    }

    private static String tag(PoolFile file) {
        return "\"" + file.checksum() + "\"";
    }

    private PoolView view(PoolChoices choices) {
        return PoolView.of(choices, snapshots.newest().orElse(null));
    }
}
