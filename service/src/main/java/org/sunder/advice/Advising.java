package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.Measure;
import org.sunder.engine.physics.Ceiling;
import org.sunder.engine.physics.FlightAir;
import org.sunder.engine.physics.FlightCase;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.FlightAdvice;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.NoFlightCharge;
import org.sunder.engine.planning.Planner;
import org.sunder.engine.planning.PlanningCase;
import org.sunder.engine.planning.SetupChange;
import org.sunder.groundtest.GroundTest;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What to fire next, and what to fly. */
@Service
public class Advising {

    private final JointCases cases;
    private final PlanningCases planning;
    private final Plans plans;

    Advising(JointCases cases, PlanningCases planning, Plans plans) {
        this.cases = cases;
        this.planning = planning;
        this.plans = plans;
    }

    /** What to do next at a joint in the setup in force. */
    @Transactional(readOnly = true)
    public NextAdvice next(UUID jointId) {
        return next(jointId, false);
    }

    /**
     * What to do next at a joint in the setup in force.
     *
     * @param explained whether to give the numbers behind the choice
     */
    @Transactional(readOnly = true)
    public NextAdvice next(UUID jointId, boolean explained) {
        JointCase joint = cases.current(jointId);
        PlanningCase on = planning.of(joint, Estimates.TARGET);
        NextStep step = plans.next(on);
        return new NextAdvice(
                step,
                plans.evidence(on),
                joint.posterior().correctionFactor(),
                joint.physics(),
                Measure.of(joint.setup().sheet()),
                joint.airframe().units(),
                explained && step instanceof NextStep.Fire ? Planner.compared(on) : List.of(),
                step instanceof NextStep.ChangeSetup
                        ? SetupChange.of(
                                joint.physics(),
                                StrictMath.exp(joint.posterior().logRatioFor(Estimates.TARGET)))
                        : List.of(),
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
                plans.ladder(on, depth),
                joint.physics().ceiling(),
                plans.evidence(on),
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    /**
     * The charge to fly, with the air left out of it.
     *
     * @param reliability chance of separating to aim at
     * @throws ProblemException 409 where the tests support no charge
     */
    @Transactional(readOnly = true)
    public FlightReport flight(UUID jointId, double reliability) {
        return flight(jointId, reliability, null);
    }

    /**
     * The charge to fly.
     *
     * @param reliability chance of separating to aim at
     * @param climb from the site to the event, or null where the air is left out of it
     * @throws ProblemException 409 where the tests support no charge
     */
    @Transactional(readOnly = true)
    public FlightReport flight(UUID jointId, double reliability, FlightCase.@Nullable Climb climb) {
        JointCase joint = cases.current(jointId);
        FlightAir air = climb == null ? null : FlightAir.of(joint.physics(), climb);
        Ceiling ceiling = air == null ? joint.physics().ceiling() : air.ceiling();
        if (ceiling.chargeKg() <= 0) {
            throw new ProblemException(
                    ProblemType.NO_FLIGHT_CHARGE,
                    "The air trapped in the compartment alone reaches the ceiling at the event: vent the compartment.");
        }
        PlanningCase on = planning.of(joint, reliability, ceiling.chargeKg());
        FlightAdvice advice = FlightAdvice.of(on);
        EvidenceReport evidence = plans.evidence(on);
        if (advice instanceof NoFlightCharge none) {
            throw new ProblemException(
                    ProblemType.NO_FLIGHT_CHARGE, none.reason() + " " + evidence.whatWouldRaiseIt(), List.of());
        }
        return new FlightReport(
                (FlightCharge) advice,
                evidence,
                joint.posterior().correctionFactor(),
                joint.physics(),
                ceiling,
                air,
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    /** Whether the model gave a test's outcome less than 2 % before it was seen. */
    public static boolean surprising(GroundTest test) {
        return PlanningCases.surprising(test);
    }
}
