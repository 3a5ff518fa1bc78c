package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Basis;
import org.sunder.advice.Decision;
import org.sunder.airframe.CeilingView;
import org.sunder.caution.CautionView;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.CorrectionView;
import org.sunder.groundtest.ProbabilityView;

/** What to do next at a joint. */
@Schema(
        name = "NextCharge",
        description = "What to do next at a joint: fire this charge on the ground, stop, or change the setup.")
record NextChargeView(
        @Schema(
                description =
                        "fire: the next ground test; stop: enough is known to fly; change-setup: no allowed charge"
                                + " can reach the target.")
        Decision decision,

        @Schema(description = "The charge to fire on the ground, where the decision is to fire.") @Nullable Mass charge,

        @Schema(description = "The charge that the tests support for flight, where the decision is to stop.") @Nullable Mass flightCharge,

        @Schema(
                description = "Why, in one sentence.",
                example = "First test: no higher than the middle of what this joint may need.")
        String why,

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

        List<CautionView> cautions,
        Basis basis) {

    /** What would follow an outcome. */
    @Schema(name = "Following", description = "What would follow an outcome.")
    record FollowingView(
            Outcome outcome, Decision decision, @Nullable Mass charge) {}
}
