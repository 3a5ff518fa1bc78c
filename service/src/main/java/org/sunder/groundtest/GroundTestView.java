package org.sunder.groundtest;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;
import org.sunder.web.EntityTags;

/** A ground test as answered. */
@Schema(name = "GroundTest", description = "One firing, on the ground or in flight, as it stands in the log.")
public record GroundTestView(
        UUID id,

        @Schema(description = "Fired on the ground as a test, or in flight.")
        Occasion occasion,

        UUID jointId,
        @Schema(example = "1") int setupRevision,
        Mass charge,
        Outcome outcome,

        @Schema(description = "Whether the charge broke anything.")
        boolean damaged,

        @Schema(description = "Measured relative speed of the parts.") @Nullable Speed speed,

        @Schema(
                description =
                        "Standard deviation of the speed in percent of it, where it was given; the model takes a speed"
                                + " without it to be good to 10 %.",
                example = "6")
        @Nullable BigDecimal speedUncertaintyPercent,

        @Nullable Containment containment,

        @Schema(description = "When it was fired, with the offset of the place.")
        OffsetDateTime firedAt,

        @Schema(description = "When the service took it in.")
        Instant receivedAt,

        @Schema(
                description = "What the access key was called that logged it, as it was called then; left out where the"
                        + " service had no keys.",
                example = "Wren")
        @Nullable String loggedBy,

        @Nullable String notes,

        @Schema(
                description =
                        "Limits that the charge, or the speed measured, lay above: recorded as fired, and marked.")
        List<Beyond> beyond,

        @Schema(description = "What the model said of this charge before it was fired.")
        ProbabilityView forecast,

        @Schema(description = "The joint's correction after this test, as it stood then (90 % interval).")
        CorrectionView correctionAfter,

        @Schema(description = "Whether the test is in the fit; false while it is void or has a finding.")
        boolean counted,

        @Schema(description = "Voids and their lifting, oldest first.")
        List<VoidMark> marks,

        @Schema(
                description = "What is wrong with the test as it is stored, by an older version or by hand; it is shown"
                        + " and not counted. Values that cannot be read are shown as nothing. Absent where it keeps the"
                        + " rules.")
        @Nullable String finding) {

    /** The view of a test. */
    public static GroundTestView of(GroundTest test) {
        Report report = test.report();
        return new GroundTestView(
                test.id(),
                test.occasion(),
                test.jointId(),
                test.setupRevision(),
                report.charge(),
                report.outcome(),
                report.damaged(),
                report.speed(),
                report.speedUncertaintyPercent(),
                report.containment(),
                report.firedAt(),
                test.receivedAt(),
                test.loggedBy(),
                report.notes(),
                test.beyond(),
                ProbabilityView.of(test.forecast()),
                CorrectionView.of(test.correctionAfter()),
                test.counted(),
                test.marks(),
                test.finding());
    }

    /** The tag of a test: only its marks can change. */
    public static String tag(GroundTest test) {
        return EntityTags.of(test.marks().size());
    }
}
