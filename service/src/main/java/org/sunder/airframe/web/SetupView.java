package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.StoredPhysics;

/** A revision of a setup. */
@Schema(name = "SetupRevision", description = "An immutable revision of a joint's setup.")
record SetupView(
        UUID jointId,
        @Schema(example = "2") int revision,
        Instant createdAt,

        @Schema(description = "Left out where its row cannot be read.") @Nullable SetupSheet setup,

        @Schema(description = "Why it, as stored, cannot be read or cannot be; left out where it can.") @Nullable String finding) {

    static SetupView of(Setup setup, StoredPhysics physics) {
        return new SetupView(
                setup.jointId(),
                setup.revision(),
                setup.createdAt(),
                setup.finding() == null ? setup.sheet() : null,
                physics.finding().orElse(null));
    }
}
