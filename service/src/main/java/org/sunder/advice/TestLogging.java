package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.OutcomeProbabilities;
import org.sunder.engine.learning.Trial;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;
import org.sunder.groundtest.NewTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** Takes a report from the field into the log, with what the model said before and learned from it. */
@Service
public class TestLogging {

    /** A little above the ceiling is a matter of rounding it for print. */
    private static final double ROUNDING = 1e-9;

    private final JointCases cases;
    private final GroundTests tests;

    TestLogging(JointCases cases, GroundTests tests) {
        this.cases = cases;
        this.tests = tests;
    }

    /**
     * Logs a test, inside the caller's transaction.
     *
     * @param jointId the joint fired
     * @param revision revision of the setup it was fired in, or null for the one in force
     * @param occasion on the ground or in flight
     * @param report what was seen
     * @throws ProblemException where the report breaks a rule, or the charge is above the ceiling
     */
    public GroundTest log(UUID jointId, @Nullable Integer revision, Occasion occasion, Report report) {
        JointCase joint = revision == null ? cases.current(jointId) : cases.at(jointId, revision);
        tests.check(report);
        refuseAboveCeiling(report.charge(), joint);
        Trial trial = Trials.of(report, joint.physics());
        OutcomeProbabilities forecast = joint.posterior().outcomes(trial.logRatio());
        LeafPosterior after = joint.posterior().after(trial);
        return tests.add(new NewTest(
                occasion,
                jointId,
                joint.setup().id(),
                joint.setup().revision(),
                report,
                forecast,
                after.correctionFactor()));
    }

    /** Takes a test out of the fit, or back into it, inside the caller's transaction. */
    public GroundTest mark(UUID testId, boolean voided, String reason) {
        return tests.mark(testId, voided, reason);
    }

    private static void refuseAboveCeiling(Mass charge, JointCase joint) {
        double ceiling = joint.physics().ceiling().chargeKg();
        Mass measure = Measure.of(joint.setup().sheet());
        String most = Display.limit(ceiling, measure).value() + " " + measure.unit();
        String given = charge.value().toPlainString() + " " + charge.unit();
        if (charge.kilograms() > ceiling * (1 + ROUNDING)) {
            throw refusal(
                    ProblemType.CHARGE_ABOVE_CEILING,
                    "The charge, " + given + ", is above the ceiling of " + most + " ("
                            + joint.physics().ceiling().source() + ").",
                    most,
                    given);
        }
    }

    private static ProblemException refusal(ProblemType type, String detail, String most, String given) {
        return new ProblemException(
                type,
                detail,
                List.of(new Fault("/charge", detail, "out-of-range", "more than 0, up to " + most, given)));
    }
}
