package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.ReportRules;

/** A report from the field. */
@Schema(name = "GroundTestReport", description = "A report from the field.")
record TestRequest(
        @Schema(description = "The charge loaded, as measured.") @NotNull(message = "the charge is needed") Mass charge,

        @NotNull(message = "none, partial or separated is needed") Outcome outcome,

        @Schema(description = "When it was fired, with the offset of the place.", example = "2026-05-03T10:20:00+01:00")
        @NotNull(message = "the time is needed") OffsetDateTime firedAt,

        @Schema(description = "Whether the charge broke anything; false where not given.") @Nullable Boolean damaged,

        @Schema(
                description =
                        "Measured relative speed of the parts, of a separated test; from frames of a video or from the"
                                + " throw.")
        @Nullable Speed speed,

        @Schema(
                description =
                        "Standard deviation of the speed in percent of it, 3 to 50, only with a speed; 10 where not"
                                + " given. The check of a speed names it for what was filmed or thrown.",
                example = "6")
        @Nullable BigDecimal speedUncertaintyPercent,

        @Schema(description = "What held the powder.") @Nullable Containment containment,

        @Schema(description = "Revision of the setup it was fired in; the one in force where not given.", example = "1")
        @Nullable Integer setupRevision,

        @Schema(example = "two pins sheared")
        @Size(max = ReportRules.LONGEST_NOTES, message = "at most 2000 characters") @Nullable String notes) {

    Report report() {
        return new Report(
                charge,
                outcome,
                Boolean.TRUE.equals(damaged),
                speed,
                speedUncertaintyPercent,
                containment,
                firedAt,
                notes);
    }
}
