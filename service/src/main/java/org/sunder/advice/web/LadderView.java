package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Basis;
import org.sunder.advice.Decision;
import org.sunder.airframe.CeilingView;
import org.sunder.caution.CautionView;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.ProbabilityView;

/** The tests rolled forward over their outcomes. */
@Schema(
        name = "Ladder",
        description = "The planned tests as a tree: charge, outcome, next charge, until a flight charge is reached.")
record LadderView(
        @Schema(example = "Bittern") String airframe,
        @Schema(example = "nose to bay") String joint,

        @Schema(description = "Firings looked ahead.", example = "3")
        int depth,

        StepView first,

        @Schema(description = "Chance that a flight charge is found after at most 0, 1, 2, … firings.")
        List<BigDecimal> doneAfter,

        PackingView packing,
        Evidence evidence,
        CeilingView ceiling,

        @Schema(description = "What to mind of the setup.") List<Warning> warnings,

        List<CautionView> cautions,
        Basis basis) {

    /** One step of the ladder. */
    @Schema(name = "LadderStep", description = "What to do at this point of the ladder.")
    record StepView(
            Decision decision,

            @Schema(description = "The charge to fire.") @Nullable Mass charge,

            @Schema(description = "The charge supported for flight.") @Nullable Mass flightCharge,

            @Schema(description = "Its backup charge.") @Nullable Mass backup,

            @Nullable BackupProofView backupProof,

            @Nullable ProbabilityView probability,

            @Schema(description = "Why; in a few words on a branch.")
            ReasonView reason,

            List<BranchView> then) {

        StepView with(ReasonView whole) {
            return new StepView(decision, charge, flightCharge, backup, backupProof, probability, whole, then);
        }
    }

    /** An outcome and what follows it. */
    @Schema(name = "LadderBranch", description = "An outcome and what follows it.")
    record BranchView(Outcome outcome, StepView step) {}

    /** What to take to the field. */
    @Schema(name = "Packing", description = "What to take to the field, enough nine times in ten.")
    record PackingView(
            @Schema(example = "3") int tests,

            @Schema(
                    description =
                            "Powder for the tests and for the flight and backup charge after them, with a quarter to spare.")
            Mass powder,

            @Schema(description = "One a test and two for the flight.", example = "5")
            int igniters,

            @Schema(description = "Shear pins by thread, for the tests and one flight.")
            List<PinsView> pins,

            @Schema(description = "Whether more than one case in ten needs more tests than the ladder looks ahead.")
            boolean open) {}
}
