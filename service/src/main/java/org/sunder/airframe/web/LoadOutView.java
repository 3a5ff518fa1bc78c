package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.LoadOutSheet;

/** A load-out as answered. */
@Schema(name = "LoadOut", description = "What is installed for a flight.")
record LoadOutView(UUID id, UUID airframeId, Instant createdAt, LoadOutSheet loadOut) {

    static LoadOutView of(InstalledLoadOut loadOut) {
        return new LoadOutView(loadOut.id(), loadOut.airframeId(), loadOut.createdAt(), loadOut.sheet());
    }
}
