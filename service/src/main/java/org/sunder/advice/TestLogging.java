package org.sunder.advice;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.sunder.airframe.CeilingSheet;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.Safeguards;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.Beyond;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.problem.ProblemException;

/**
 * Takes a report from the field into the log, with what the model said before and learned from it. A draft reads the fleet and
 * computes, with no transaction open; it is stored only if the fleet is still the one it rests on.
 */
@Service
public class TestLogging {

    /** A little above a limit is a matter of rounding it for print. */
    private static final double ROUNDING = 1e-9;

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
     * @throws ProblemException where the report breaks a rule
     */
    public LogDraft draft(UUID jointId, @Nullable Integer revision, Occasion occasion, Report report) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint joint = fleet.joint(jointId);
        Setup setup = joint.setup(revision);
        JointPhysics physics = joint.physics(setup);
        tests.check(report);
        LeafPosterior before = findings.posterior(fleet, setup);
        Trial trial = Trials.of(report, physics);
        GroundTest test = tests.draft(
                occasion,
                setup,
                report,
                beyond(report, joint, setup),
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
     * @throws org.sunder.persistence.StaleFleetException where the fleet is no longer the one the draft rests on
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

    /** The limits that a firing lay above: recorded as it was, and marked. */
    private static List<Beyond> beyond(Report report, LoggedJoint joint, Setup setup) {
        List<Beyond> beyond = new ArrayList<>();
        double charge = report.charge().kilograms();
        OffsetDateTime firedAt = report.firedAt();
        JointPhysics physics = joint.physics(setup);
        if (charge > physics.ceiling().chargeKg() * (1 + ROUNDING)) {
            beyond.add(Beyond.CEILING);
        }
        double ratio = charge / physics.handbookCharge();
        OptionalDouble highest = joint.tests().stream()
                .filter(test -> test.counted() && !test.report().damaged())
                .filter(test -> !test.report().firedAt().isAfter(firedAt))
                .flatMap(
                        test -> joint
                                .physicsOf(test)
                                .map(then -> test.report().charge().kilograms() / then.handbookCharge())
                                .stream())
                .mapToDouble(Double::doubleValue)
                .max();
        if (highest.isPresent() && ratio > highest.getAsDouble() * Safeguards.LARGEST_STEP * (1 + ROUNDING)) {
            beyond.add(Beyond.STEP);
        }
        if (tooFast(report.speed(), setup.sheet().ceiling())) {
            beyond.add(Beyond.SPEED);
        }
        return beyond;
    }

    private static boolean tooFast(@Nullable Speed measured, @Nullable CeilingSheet stated) {
        if (measured == null || stated == null || stated.separationSpeed() == null) {
            return false;
        }
        return measured.metresPerSecond() > stated.separationSpeed().metresPerSecond() * (1 + ROUNDING);
    }
}
