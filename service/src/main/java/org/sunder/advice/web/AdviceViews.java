package org.sunder.advice.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Advising;
import org.sunder.advice.ChangeWords;
import org.sunder.advice.Decision;
import org.sunder.advice.Estimate;
import org.sunder.advice.FilmWords;
import org.sunder.advice.FlightReport;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.CeilingView;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.LogUncertainty;
import org.sunder.engine.planning.BackupCharge;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.SetupChange;
import org.sunder.engine.planning.TestsAlone;
import org.sunder.engine.planning.Worth;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.CorrectionView;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTestView;
import org.sunder.groundtest.ProbabilityView;

/** From what was computed to what is answered. */
final class AdviceViews {

    private static final MathContext DIGITS = new MathContext(3);
    private static final List<String> QUESTIONS = List.of(
            "Were all pins in, and of the size in the setup?",
            "Was it the same powder and lot, all of it loaded?",
            "Did the igniter fire in the charge, and did the charge burn?",
            "Did gas leak where it should not?");

    private AdviceViews() {}

    static EstimateView estimate(Estimate estimate, Display display) {
        JointPhysics physics = estimate.physics();
        Mass measure = estimate.measure();
        List<EstimateView.Share> contents = physics.volume().contents().stream()
                .map(share -> new EstimateView.Share(share.name(), display.volume(share.volume())))
                .toList();
        return new EstimateView(
                display.volume(physics.volume().cavity()),
                contents,
                display.volume(physics.freeVolume()),
                display.area(physics.area()),
                display.force(physics.retention().mean()),
                display.force(physics.retention().pins()),
                display.pressure(physics.thresholdPressure()),
                Display.charge(physics.handbookCharge(), measure),
                uncertainty(physics.uncertainty()),
                CorrectionView.of(estimate.correction()),
                Display.charge(estimate.medianCharge(), measure),
                Display.charge(estimate.targetCharge(), measure),
                BigDecimal.valueOf(estimate.target()),
                estimate.separationSpeed().map(display::speed).orElse(null),
                CeilingView.of(physics.ceiling(), measure),
                physics.warnings(),
                CautionView.all(),
                estimate.basis());
    }

    static NextChargeView next(NextAdvice advice, Display display) {
        NextStep step = advice.step();
        Mass measure = advice.measure();
        boolean fire = step instanceof NextStep.Fire;
        BackupCharge backup =
                step instanceof NextStep.Stop stop ? stop.flightCharge().backup() : null;
        return new NextChargeView(
                decision(step),
                fire ? charge(step, measure) : null,
                step instanceof NextStep.Stop ? charge(step, measure) : null,
                backup == null ? null : Display.onMeasure(backup.charge(), measure),
                backup == null ? null : BackupProofView.of(backup, measure),
                ReasonView.of(advice.reason(), measure),
                step instanceof NextStep.Fire f ? ProbabilityView.of(f.probabilities()) : null,
                advice.evidence().evidence(),
                advice.evidence().reason(),
                advice.evidence().whatWouldRaiseIt(),
                Display.charge(advice.physics().handbookCharge(), measure),
                CorrectionView.of(advice.correction()),
                CeilingView.of(advice.physics().ceiling(), measure),
                following(step, measure),
                advice.changes().stream()
                        .map(change -> change(change, measure, display))
                        .toList(),
                advice.compared().stream().map(worth -> compared(worth, advice)).toList(),
                advice.filmed() == null ? null : filmed(advice.filmed()),
                advice.physics().warnings(),
                CautionView.all(),
                advice.basis());
    }

    private static NextChargeView.FilmedView filmed(NextAdvice.Filmed films) {
        return new NextChargeView.FilmedView(
                films.percent(),
                ProbabilityView.rounded(films.worth().read()),
                ProbabilityView.rounded(films.worth().unread()),
                FilmWords.of(films));
    }

    private static NextChargeView.SetupChangeView change(SetupChange change, Mass inUse, Display display) {
        Mass measure = change.measure() == null ? inUse : change.measure();
        JointPhysics physics = change.physics();
        return new NextChargeView.SetupChangeView(
                change.kind(),
                ChangeWords.of(change, inUse, display),
                change.pins().stream()
                        .map(set -> new PinsView(set.thread().toString(), set.count()))
                        .toList(),
                change.filler() > 0 ? display.volume(change.filler()) : null,
                change.measure(),
                display.volume(physics.freeVolume()),
                display.pressure(physics.thresholdPressure()),
                Display.charge(physics.handbookCharge(), measure),
                Display.charge(change.targetCharge(), measure),
                CeilingView.of(physics.ceiling(), measure));
    }

    private static NextChargeView.ComparedView compared(Worth worth, NextAdvice advice) {
        double target = advice.physics().handbookCharge() * StrictMath.exp(worth.logTarget());
        return new NextChargeView.ComparedView(
                Display.onMeasure(worth.charge(), advice.measure()),
                ProbabilityView.rounded(worth.separated()),
                Display.charge(target, advice.measure()),
                ProbabilityView.rounded(worth.finished()),
                digits(worth.loss()));
    }

    static FlightChargeView flight(FlightReport report, BigDecimal reliability, Display display) {
        FlightCharge charge = report.charge();
        Mass measure = report.measure();
        TestsAlone alone = charge.testsAlone();
        return new FlightChargeView(
                Display.onMeasure(charge.charge(), measure),
                Display.onMeasure(charge.backup().charge(), measure),
                charge.backup().bound(),
                BackupProofView.of(charge.backup(), measure),
                BothChargesView.of(charge.both(), measure, display),
                reliability,
                ProbabilityView.rounded(charge.modelChance()),
                new FlightChargeView.TestsAloneView(
                        alone.counted(),
                        alone.separated(),
                        ProbabilityView.rounded(alone.lowerBound()),
                        BigDecimal.valueOf(alone.confidence())),
                report.evidence().evidence(),
                report.evidence().reason(),
                report.evidence().whatWouldRaiseIt(),
                Display.charge(report.physics().handbookCharge(), measure),
                CorrectionView.of(report.correction()),
                CeilingView.of(report.ceiling(), measure),
                report.air() == null ? null : FlightAirView.of(report.air(), display),
                warnings(report),
                CautionView.all(),
                report.basis());
    }

    private static List<Warning> warnings(FlightReport report) {
        List<Warning> all = new ArrayList<>(report.physics().warnings());
        if (report.air() != null) {
            all.addAll(report.air().warnings());
        }
        return all;
    }

    static LoggedTestView logged(GroundTest test, NextAdvice next) {
        LoggedTestView.SurpriseView surprise = test.counted() && Advising.surprising(test)
                ? new LoggedTestView.SurpriseView(
                        ProbabilityView.rounded(test.forecast().of(test.report().outcome())),
                        QUESTIONS,
                        "/api/ground-tests/" + test.id() + "/void")
                : null;
        return new LoggedTestView(
                GroundTestView.of(test),
                CorrectionView.of(next.correction()),
                surprise,
                next(next, new Display(next.units())));
    }

    static Decision decision(NextStep step) {
        if (step instanceof NextStep.Fire) {
            return Decision.FIRE;
        }
        if (step instanceof NextStep.Stop) {
            return Decision.STOP;
        }
        return step instanceof NextStep.StateLimit ? Decision.STATE_LIMIT : Decision.CHANGE_SETUP;
    }

    private static @Nullable Mass charge(NextStep step, Mass measure) {
        if (step instanceof NextStep.Fire fire) {
            return Display.onMeasure(fire.charge(), measure);
        }
        return step instanceof NextStep.Stop stop
                ? Display.onMeasure(stop.flightCharge().charge(), measure)
                : null;
    }

    private static List<NextChargeView.FollowingView> following(NextStep step, Mass measure) {
        if (!(step instanceof NextStep.Fire fire)) {
            return List.of();
        }
        return fire.then().stream()
                .map(after -> new NextChargeView.FollowingView(
                        after.outcome(), decision(after.step()), charge(after.step(), measure)))
                .toList();
    }

    private static EstimateView.Uncertainty uncertainty(LogUncertainty u) {
        return new EstimateView.Uncertainty(
                digits(u.pins()), digits(u.fit()), digits(u.volume()), digits(u.powder()), digits(u.total()));
    }

    private static BigDecimal digits(double value) {
        return BigDecimal.valueOf(value).round(DIGITS);
    }
}
