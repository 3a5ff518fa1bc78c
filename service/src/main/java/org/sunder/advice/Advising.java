package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.Measure;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.FlightAdvice;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NoFlightCharge;
import org.sunder.engine.planning.Planner;
import org.sunder.engine.planning.PlanningCase;
import org.sunder.groundtest.GroundTest;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What to fire next, and what to fly. */
@Service
public class Advising {

    private final JointCases cases;
    private final PlanningCases planning;

    Advising(JointCases cases, PlanningCases planning) {
        this.cases = cases;
        this.planning = planning;
    }

    /** What to do next at a joint in the setup in force. */
    @Transactional(readOnly = true)
    public NextAdvice next(UUID jointId) {
        JointCase joint = cases.current(jointId);
        PlanningCase on = planning.of(joint, Estimates.TARGET);
        return new NextAdvice(
                Planner.nextCharge(on),
                EvidenceReport.of(on),
                joint.posterior().correctionFactor(),
                joint.physics(),
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    /**
     * The tests rolled forward over their outcomes.
     *
     * @param depth firings to look ahead, 1 to {@link Ladder#DEEPEST}
     */
    @Transactional(readOnly = true)
    public LadderAdvice ladder(UUID jointId, int depth) {
        JointCase joint = cases.current(jointId);
        PlanningCase on = planning.of(joint, Estimates.TARGET);
        return new LadderAdvice(
                joint.airframe().name(),
                joint.joint().name(),
                joint.setup().sheet(),
                Ladder.of(on, depth),
                joint.physics().ceiling(),
                EvidenceReport.of(on),
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    /**
     * The charge to fly.
     *
     * @param reliability chance of separating to aim at
     * @throws ProblemException 409 where the tests support no charge
     */
    @Transactional(readOnly = true)
    public FlightReport flight(UUID jointId, double reliability) {
        JointCase joint = cases.current(jointId);
        PlanningCase on = planning.of(joint, reliability);
        FlightAdvice advice = FlightAdvice.of(on);
        EvidenceReport evidence = EvidenceReport.of(on);
        if (advice instanceof NoFlightCharge none) {
            throw new ProblemException(
                    ProblemType.NO_FLIGHT_CHARGE, none.reason() + " " + evidence.whatWouldRaiseIt(), List.of());
        }
        return new FlightReport(
                (FlightCharge) advice,
                evidence,
                joint.posterior().correctionFactor(),
                joint.physics(),
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    /** Whether the model gave a test's outcome less than 2 % before it was seen. */
    public static boolean surprising(GroundTest test) {
        return PlanningCases.surprising(test);
    }
}
