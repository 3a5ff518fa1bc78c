package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.History;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.groundtest.GroundTestView;

/** Everything that happened to an airframe, oldest first. */
@Schema(name = "History", description = "Everything that happened to an airframe, oldest first.")
record HistoryView(
        UUID airframeId, @Schema(example = "Bittern") String airframe, List<EntryView> entries) {

    /** One thing that happened. */
    @Schema(name = "HistoryEntry", description = "One thing that happened to an airframe.")
    record EntryView(
            Instant at,
            History.Kind kind,
            @Schema(example = "nose to bay") @Nullable String joint,
            @Nullable UUID jointId,
            @Schema(example = "1") @Nullable Integer setupRevision,

            @Schema(description = "The setup, where one came into force.") @Nullable SetupSheet setup,

            @Schema(description = "The test, with the correction as it stood after it.") @Nullable GroundTestView test,

            @Schema(description = "Why a test was voided or restored.") @Nullable String reason) {

        static EntryView of(History.Entry entry) {
            Joint joint = entry.joint();
            Setup setup = entry.setup();
            return new EntryView(
                    entry.at(),
                    entry.kind(),
                    joint == null ? null : joint.name(),
                    joint == null ? null : joint.id(),
                    setup == null ? null : setup.revision(),
                    setup == null || entry.test() != null ? null : setup.sheet(),
                    entry.test() == null ? null : GroundTestView.of(entry.test()),
                    entry.mark() == null ? null : entry.mark().reason());
        }
    }
}
