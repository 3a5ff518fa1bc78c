package org.sunder.access.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.sunder.access.Flyer;

/** A flyer as answered. */
@Schema(name = "Flyer", description = "A person who owns airframes and holds keys.")
record FlyerView(UUID id, @Schema(example = "flyer 12") String name, Instant createdAt) {

    static FlyerView of(Flyer flyer) {
        return new FlyerView(flyer.id(), flyer.name(), flyer.createdAt());
    }
}
