package org.sunder.advice.web;

import java.util.List;
import org.sunder.advice.LadderAdvice;
import org.sunder.airframe.CeilingView;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.ProbabilityView;

/** From a ladder to what is answered. */
final class LadderViews {

    private LadderViews() {}

    static LadderView of(LadderAdvice advice) {
        Ladder ladder = advice.ladder();
        return new LadderView(
                advice.airframe(),
                advice.joint(),
                ladder.depth(),
                first(advice),
                ladder.doneAfter().stream().map(ProbabilityView::rounded).toList(),
                packing(advice),
                advice.evidence().evidence(),
                CeilingView.of(advice.ceiling(), advice.measure()),
                advice.warnings(),
                CautionView.all(),
                advice.basis());
    }

    private static LadderView.StepView first(LadderAdvice advice) {
        LadderView.StepView first = step(advice.ladder().root(), advice.measure());
        return first.with(ReasonView.of(advice.reason(), advice.measure()));
    }

    private static LadderView.StepView step(NextStep step, Mass measure) {
        ReasonView reason = ReasonView.inShort(step.reason(), measure);
        if (step instanceof NextStep.Fire fire) {
            List<LadderView.BranchView> then = fire.then().stream()
                    .map(branch -> new LadderView.BranchView(branch.outcome(), step(branch.step(), measure)))
                    .toList();
            return new LadderView.StepView(
                    AdviceViews.decision(step),
                    Display.onMeasure(fire.charge(), measure),
                    null,
                    null,
                    null,
                    ProbabilityView.of(fire.probabilities()),
                    reason,
                    then);
        }
        if (step instanceof NextStep.Stop stop) {
            return new LadderView.StepView(
                    AdviceViews.decision(step),
                    null,
                    Display.onMeasure(stop.flightCharge().charge(), measure),
                    Display.onMeasure(stop.flightCharge().backup().charge(), measure),
                    BackupProofView.inShort(stop.flightCharge().backup(), measure),
                    null,
                    reason,
                    List.of());
        }
        return new LadderView.StepView(AdviceViews.decision(step), null, null, null, null, null, reason, List.of());
    }

    private static LadderView.PackingView packing(LadderAdvice advice) {
        Ladder.Packing packing = advice.ladder().packing();
        List<PinsView> pins = advice.sheet().pins().stream()
                .map(set -> new PinsView(set.thread(), set.count() * (packing.tests() + 1)))
                .toList();
        return new LadderView.PackingView(
                packing.tests(),
                Display.onMeasure(packing.powder(), advice.measure()),
                packing.igniters(),
                pins,
                packing.open());
    }
}
