package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.physics.charge.CeilingSource;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;

/**
 * One thing that a flight charge rests on, known or missing.
 *
 * @param has whether it is known
 * @param what it is
 * @param detail what is known of it, or what would tell it
 */
record Known(boolean has, String what, String detail) {

    /** All of them, in the order in which tests bring them. */
    static List<Known> of(JointAnswer answer, NextAdvice next, int revision) {
        List<GroundTest> counted =
                answer.tests().stream().filter(GroundTest::counted).toList();
        List<Known> all = new ArrayList<>();
        all.add(moves(counted, next.measure()));
        all.add(limit(next));
        all.add(parts(counted, revision, next.measure()));
        all.add(close(next));
        all.add(confirmed(next));
        return all;
    }

    private static Known moves(List<GroundTest> counted, Mass measure) {
        return counted.stream()
                .filter(test -> test.report().outcome() != Outcome.NONE)
                .map(test -> test.report().charge())
                .min(Comparator.comparingDouble(Mass::kilograms))
                .map(least -> new Known(
                        true, "Where it starts to move", "at " + Words.of(Display.loaded(least, measure)) + " or less"))
                .orElseGet(() -> new Known(false, "Where it starts to move", "nothing has moved it yet"));
    }

    private static Known limit(NextAdvice next) {
        var ceiling = next.physics().ceiling();
        String charge = AnswerWords.limit(ceiling.chargeKg(), next.measure());
        boolean stated = ceiling.source() != CeilingSource.DEFAULT_THREE_TIMES_THRESHOLD;
        return new Known(
                stated,
                "What the airframe withstands",
                stated
                        ? "never above " + charge
                        : "no limit is stated; " + charge + ", three times the threshold, stands guard for it");
    }

    private static Known parts(List<GroundTest> counted, int revision, Mass measure) {
        return counted.stream()
                .filter(test -> test.report().outcome() == Outcome.SEPARATED && test.setupRevision() == revision)
                .map(test -> test.report().charge())
                .min(Comparator.comparingDouble(Mass::kilograms))
                .map(least -> new Known(
                        true,
                        "A test that separates it",
                        "at " + Words.of(Display.loaded(least, measure)) + ", in this setup"))
                .orElseGet(() -> new Known(false, "A test that separates it", "in this setup, with everything packed"));
    }

    private static Known close(NextAdvice next) {
        CorrectionFactor factor = next.correction();
        return new Known(
                next.step() instanceof NextStep.Stop,
                "A flight charge that is close enough",
                "what it needs lies between " + Words.times(factor.low()) + " and " + Words.times(factor.high())
                        + " of the handbook charge");
    }

    private static Known confirmed(NextAdvice next) {
        boolean sufficient = next.evidence().evidence() == Evidence.SUFFICIENT;
        return new Known(
                sufficient,
                "That charge confirmed",
                sufficient ? "separated on the ground" : "one separation at the flight charge or below");
    }

    /** What holds it: measured, or a handbook's word. */
    static Known pins(List<PinSet> pins, boolean pulled) {
        return new Known(
                pulled || pins.isEmpty(),
                "What the pins hold",
                pins.isEmpty()
                        ? "no pins: the fit holds it"
                        : pulled ? "pulled pins of the batch" : "a handbook strength: pull five pins of your batch");
    }
}
