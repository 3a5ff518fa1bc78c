package org.sunder.pool.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.sunder.pool.PoolSnapshot;

/** A snapshot in a list. */
@Schema(name = "PoolSnapshot", description = "What the pool knew at a time, in short. It never changes.")
record PoolSnapshotView(
        @Schema(description = "Its number on this service.", example = "3")
        int number,

        @Schema(description = "Who gave the file, in the words of whoever took it in; absent where it was made here.")
        @Nullable String givenBy,

        @Schema(description = "When it was made or taken in.")
        Instant storedAt,

        @Schema(description = "The day on which it was made.", example = "2026-11-27")
        String date,

        @Schema(description = "How many flyers it was learned from.", example = "12")
        int flyers,

        @Schema(description = "How many counted tests it was learned from.", example = "164")
        int tests,

        @Schema(description = "The checksum of its file.") String checksum) {

    static PoolSnapshotView of(PoolSnapshot snapshot) {
        return new PoolSnapshotView(
                snapshot.number(),
                snapshot.givenBy(),
                snapshot.storedAt(),
                snapshot.file().date(),
                snapshot.file().flyers(),
                snapshot.file().tests(),
                snapshot.file().checksum());
    }
}
