package org.sunder.pool.web;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.sunder.pool.PoolChoices;
import org.sunder.pool.PoolSnapshot;

/** What the caller chose of the pool, and what there is. */
@Schema(name = "Pool", description = "What the caller chose of the pool, and what there is.")
record PoolView(
        @Schema(description = "Whether the own log is in the next snapshot. Off until switched on.")
        boolean sharing,

        @Schema(description = "Whether answers may rest on the pool.")
        boolean using,

        @Schema(
                description =
                        "Number of the snapshot that the answers rest on where the pool is used; absent before the"
                                + " first. It changes when a setup is described or on request, never between a test and the"
                                + " answer to it.",
                example = "3")
        @Nullable Integer snapshot,

        @Schema(description = "The newest snapshot; absent before the first.") @Nullable PoolSnapshotView newest) {

    static PoolView of(PoolChoices choices, @Nullable PoolSnapshot newest) {
        return new PoolView(
                choices.sharing(),
                choices.using(),
                choices.using() ? choices.snapshot() : null,
                newest == null ? null : PoolSnapshotView.of(newest));
    }
}
