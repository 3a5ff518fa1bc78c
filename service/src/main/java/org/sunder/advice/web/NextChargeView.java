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
import org.sunder.engine.planning.SetupChange;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Volume;
import org.sunder.groundtest.CorrectionView;
import org.sunder.groundtest.ProbabilityView;

/** What to do next at a joint. */
@Schema(
        name = "NextCharge",
        description = "What to do next at a joint: fire this charge on the ground, stop, or change the setup.")
record NextChargeView(
        @Schema(
                description =
                        "fire: the next ground test; stop: enough is known to fly; state-limit: only the ceiling taken"
                                + " for want of a limit is in the way, so state what the airframe withstands;"
                                + " change-setup: no allowed charge can reach the target.")
        Decision decision,

        @Schema(description = "The charge to fire on the ground, where the decision is to fire.") @Nullable Mass charge,

        @Schema(description = "The charge that the tests support for flight, where the decision is to stop.") @Nullable Mass flightCharge,

        @Schema(description = "Second charge of a flight, later in time, where the decision is to stop.") @Nullable Mass backup,

        @Schema(description = "How that charge stands to what was fired, where the decision is to stop.") @Nullable BackupProofView backupProof,

        @Schema(description = "Why, with the planner's own figures.")
        ReasonView reason,

        @Schema(description = "Chances of the outcomes of the charge named.") @Nullable ProbabilityView probability,

        Evidence evidence,

        @Schema(description = "Why the evidence is what it is.")
        String evidenceReason,

        @Schema(description = "What would raise it.") String evidenceNeeds,

        @Schema(description = "What the textbook formula asks for.")
        Mass handbookCharge,

        CorrectionView correction,
        CeilingView ceiling,

        @Schema(description = "What would follow each outcome.")
        List<FollowingView> then,

        @Schema(
                description = "Ways on, where the decision is to change the setup or to state a limit: a finer measure,"
                        + " if it alone will do, and the least change of each kind that would bring the target below the"
                        + " ceiling. Empty where none does, as under a ceiling that falls with the setup; state a"
                        + " structural limit then.")
        List<SetupChangeView> options,

        @Schema(description = "The numbers behind the choice, where asked for: what each charge compared leads to.")
        List<ComparedView> compared,

        @Schema(
                description = "What films of the firings do for it, where they are counted on; absent where the setup"
                        + " names no masses or no shoulder, since then a speed tells nothing.")
        @Nullable FilmedView filmed,

        @Schema(description = "What to mind of the setup: some of it changes what a charge does.")
        List<Warning> warnings,

        List<CautionView> cautions,
        Basis basis) {

    /** What films of the firings do. */
    @Schema(
            name = "Filmed",
            description =
                    "The choice counts on the speed that a film of a separation is going to tell. What would follow"
                            + " each outcome is named as if no speed were read, since at the field none may be.")
    record FilmedView(
            @Schema(description = "Standard deviation of a speed counted on, in percent of it.", example = "5")
            BigDecimal uncertaintyPercent,

            @Schema(
                    description = "Chance that this firing is the last test, its film read; 1 where none is needed.",
                    example = "0.42")
            BigDecimal lastTest,

            @Schema(description = "That chance of the same firing, no speed read.", example = "0.35")
            BigDecimal lastTestWithout,

            @Schema(
                    description = "The same in a sentence.",
                    example = "The chance that this firing is the last test is 42 in 100 with its film read, 35 in 100"
                            + " without.")
            String text) {}

    /** Another setup that would do. */
    @Schema(name = "SetupChange", description = "Another setup that would do, if the correction learned so far holds.")
    record SetupChangeView(
            SetupChange.Kind kind,

            @Schema(
                    description = "The same in a sentence.",
                    example = "2 × M2.5 as pins: likely to need 0.85 g, at most 1.40 g allowed.")
            String text,

            @Schema(description = "The pins of that setup.") List<PinsView> pins,

            @Schema(description = "Volume to fill with something solid, where less volume is the change.") @Nullable Volume filler,

            @Schema(description = "Step of charges, where a finer measure is the change.") @Nullable Mass measure,

            Volume freeVolume,
            Pressure thresholdPressure,
            Mass handbookCharge,

            @Schema(description = "Charge that it is likely to need; an estimate, not a charge to fly.")
            Mass targetCharge,

            CeilingView ceiling) {}

    /** What firing a charge is expected to lead to. */
    @Schema(name = "ComparedCharge", description = "What firing a charge is expected to lead to.")
    record ComparedView(
            Mass charge,

            @Schema(description = "Chance that it separates the joint.", example = "0.57")
            BigDecimal separated,

            @Schema(description = "Charge for the target reliability after it, geometric mean over its outcomes.")
            Mass targetAfter,

            @Schema(description = "Chance that testing may stop after it.", example = "0.12")
            BigDecimal finished,

            @Schema(
                    description = "What is weighed, the less the better: ln of the target charge over the handbook"
                            + " charge, and 0.1 where a further test is needed.",
                    example = "0.61")
            BigDecimal loss) {}

    /** What would follow an outcome. */
    @Schema(name = "Following", description = "What would follow an outcome.")
    record FollowingView(
            Outcome outcome, Decision decision, @Nullable Mass charge) {}
}
