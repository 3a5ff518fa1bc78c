package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Basis;
import org.sunder.airframe.CeilingView;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.CorrectionView;

/** The charge that the tests support for flight. */
@Schema(name = "FlightCharge", description = "The charge that the tests support for flight, and how far to trust it.")
record FlightChargeView(
        @Schema(description = "Smallest charge of the measure that reaches the target.")
        Mass primary,

        @Schema(description = "Second charge, later in time: 1.25 times the primary, never above the ceiling.")
        Mass backup,

        @Schema(description = "Whether the ceiling holds the backup down.")
        boolean backupAtCeiling,

        BackupProofView backupProof,

        BothChargesView bothAtOnce,

        @Schema(description = "The chance of separating that was aimed at.", example = "0.99")
        BigDecimal reliability,

        @Schema(description = "What the model says of the primary.", example = "0.9921")
        BigDecimal modelProbability,

        TestsAloneView testsAlone,
        Evidence evidence,

        @Schema(description = "Why the evidence is what it is.")
        String evidenceReason,

        @Schema(description = "What would raise it.") String evidenceNeeds,

        @Schema(description = "What the textbook formula asks for.")
        Mass handbookCharge,

        CorrectionView correction,
        CeilingView ceiling,

        @Schema(description = "The air of the flight, where site or event was given.") @Nullable FlightAirView air,

        @Schema(description = "What to know of the setup and of the air of the flight.")
        List<Warning> warnings,

        List<CautionView> cautions,
        Basis basis) {

    /** What the tests show with no model. */
    @Schema(
            name = "TestsAlone",
            description =
                    "What counted tests at that charge ratio or lower show with no model: the Clopper-Pearson lower"
                            + " bound.")
    record TestsAloneView(
            @Schema(description = "Tests at that ratio or lower.", example = "2")
            int tests,

            @Schema(description = "Of these, separated.", example = "2")
            int separated,

            @Schema(description = "Lower bound of the chance of separating.", example = "0.2236")
            BigDecimal lowerBound,

            @Schema(description = "Confidence of the bound.", example = "0.95")
            BigDecimal confidence) {}
}
