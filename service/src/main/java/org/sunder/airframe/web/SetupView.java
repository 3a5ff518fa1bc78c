package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;

/** A revision of a setup. */
@Schema(name = "SetupRevision", description = "An immutable revision of a joint's setup.")
record SetupView(UUID jointId, @Schema(example = "2") int revision, Instant createdAt, SetupSheet setup) {

    static SetupView of(Setup setup) {
        return new SetupView(setup.jointId(), setup.revision(), setup.createdAt(), setup.sheet());
    }
}
