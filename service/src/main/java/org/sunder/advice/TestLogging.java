package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Trial;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Takes a report from the field into the log, with what the model said before and learned from it. A draft reads the fleet and
 * computes, with no transaction open; it is stored only if the fleet is still the one it rests on.
 */
@Service
public class TestLogging {

    private static final double SLOWEST = 0.1; // m/s
    private static final double FASTEST = 300; // m/s

    private final FleetSnapshots fleets;
    private final Findings findings;
    private final Advising advising;
    private final GroundTests tests;

    TestLogging(FleetSnapshots fleets, Findings findings, Advising advising, GroundTests tests) {
        this.fleets = fleets;
        this.findings = findings;
        this.advising = advising;
        this.tests = tests;
    }

    /**
     * A report as it will stand in the log.
     *
     * @param jointId the joint fired
     * @param revision revision of the setup it was fired in, or null for the one in force
     * @param occasion on the ground or in flight
     * @param report what was seen
     * @throws ProblemException where the report is of something that cannot be
     */
    public LogDraft draft(UUID jointId, @Nullable Integer revision, Occasion occasion, Report report) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint joint = fleet.joint(jointId);
        Setup setup = joint.setup(revision);
        JointPhysics physics = joint.physics(setup);
        tests.refuseFuture(report.firedAt());
        refuseImpossible(report.charge(), joint, setup);
        refuseOddSpeed(report);
        LeafPosterior before = findings.posterior(fleet, setup);
        Trial trial = Trials.of(report, physics);
        GroundTest test = tests.draft(
                occasion,
                setup,
                report,
                before.outcomes(trial.logRatio()),
                before.after(trial).correctionFactor());
        return draft(fleet, test);
    }

    /** A test taken out of the fit, or back into it, as it will stand in the log. */
    public LogDraft mark(UUID testId, boolean voided, String reason) {
        FleetSnapshot fleet = fleets.current();
        return draft(fleet, tests.marked(fleet.test(testId), voided, reason));
    }

    private LogDraft draft(FleetSnapshot fleet, GroundTest test) {
        FleetSnapshot after = fleet.with(test);
        return new LogDraft(fleet, after, test, advising.next(after, test.jointId()));
    }

    /**
     * Stores a drafted test, inside the caller's transaction.
     *
     * @throws org.sunder.http.StaleFleetException where the fleet is no longer the one the draft rests on
     */
    public void add(LogDraft draft) {
        tests.add(draft.test(), draft.version());
        keepOnceStored(draft);
    }

    /** Stores a drafted mark of a test, as {@link #add}. */
    public void addMark(LogDraft draft) {
        tests.mark(draft.test(), draft.version());
        keepOnceStored(draft);
    }

    private void keepOnceStored(LogDraft draft) {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                findings.keep(draft.after());
            }
        });
    }

    private static void refuseImpossible(Mass charge, LoggedJoint joint, Setup setup) {
        double ceiling = joint.physics(setup).ceiling().chargeKg();
        Mass measure = Measure.of(setup.sheet());
        String most = Display.limit(ceiling, measure).value() + " " + measure.unit();
        String given = charge.value().toPlainString() + " " + charge.unit();
        if (!(charge.kilograms() > 0)) {
            String detail = "The charge, " + given + ", must be more than nothing.";
            throw new ProblemException(
                    ProblemType.UNSOUND_CHARGE,
                    detail,
                    List.of(new Fault("/charge", detail, "out-of-range", "more than 0, up to " + most, given)));
        }
    }

    private static void refuseOddSpeed(Report report) {
        Speed speed = report.speed();
        if (speed == null) {
            return;
        }
        if (report.outcome() != Outcome.SEPARATED) {
            throw ProblemException.invalid(
                    "/speed",
                    speed.value(),
                    "A speed was given, but only a separated test has one.",
                    "no speed, or the outcome separated");
        }
        if (!(speed.metresPerSecond() >= SLOWEST && speed.metresPerSecond() <= FASTEST)) {
            throw ProblemException.invalid(
                    "/speed",
                    speed.value(),
                    "The speed, " + speed.value().toPlainString() + " " + speed.unit()
                            + ", is out of range; 0.1 to 300 m/s is allowed.",
                    "0.1 to 300 m/s");
        }
    }
}
