package org.sunder.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.flight.FlightAir;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.FilmWorth;
import org.sunder.engine.planning.FlightAdvice;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.NoFlightCharge;
import org.sunder.engine.planning.Planner;
import org.sunder.engine.planning.PlanningCase;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.planning.SetupChange;
import org.sunder.groundtest.GroundTest;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What to fire next, and what to fly. */
@Service
public class Advising {

    private final FleetSnapshots fleets;
    private final Findings findings;

    Advising(FleetSnapshots fleets, Findings findings) {
        this.fleets = fleets;
        this.findings = findings;
    }

    /** What to do next at a joint in the setup in force. */
    public NextAdvice next(UUID jointId) {
        return next(fleets.current(), jointId);
    }

    /**
     * What to do next at a joint in the setup in force.
     *
     * @param explained whether to give the numbers behind the choice
     */
    public NextAdvice next(UUID jointId, boolean explained) {
        FleetSnapshot fleet = fleets.current();
        NextAdvice advice = next(fleet, jointId);
        return explained ? explained(advice, joint(fleet, jointId)) : advice;
    }

    private static NextAdvice explained(NextAdvice advice, JointCase joint) {
        return advice.step() instanceof NextStep.Fire
                ? advice.with(Planner.compared(joint.planning(Estimates.TARGET)))
                : advice;
    }

    /**
     * What to do next at a joint whose firings are filmed, whatever the flyer said of films: the choice counts on what a film is
     * going to tell. As without films where the setup predicts no speed.
     *
     * @param percent standard deviation of a speed, in percent of it; 3 to 50
     */
    public NextAdvice filmed(UUID jointId, boolean explained, BigDecimal percent) {
        FleetSnapshot fleet = fleets.current();
        return findings.answer(fleet, new FilmedAt(jointId, percent.stripTrailingZeros(), explained), () -> {
            JointCase joint = joint(fleet, jointId).filmed(percent);
            NextAdvice advice = next(joint, evidence(joint));
            return explained ? explained(advice, joint) : advice;
        });
    }

    /** What to do next at a joint of a fleet. */
    NextAdvice next(FleetSnapshot fleet, UUID jointId) {
        return findings.answer(fleet, new NextAt(jointId), () -> {
            JointCase joint = joint(fleet, jointId);
            return next(joint, evidence(joint));
        });
    }

    /** What to do next in a case, whether its setup is stored or not. */
    static NextAdvice next(JointCase joint, EvidenceReport evidence) {
        PlanningCase on = joint.planning(Estimates.TARGET);
        NextStep step = Planner.nextCharge(on);
        List<SetupChange> changes = changes(joint, on, step);
        return new NextAdvice(
                step,
                reason(joint, step, changes),
                evidence,
                joint.posterior().correctionFactor(),
                joint.physics(),
                joint.measure(),
                joint.logged().airframe().units(),
                List.of(),
                changes,
                on.filming() == null
                        ? null
                        : new NextAdvice.Filmed(Objects.requireNonNull(joint.films()), FilmWorth.of(on, step)),
                joint.basis());
    }

    /** Ways on where no charge will do, the smallest first. */
    private static List<SetupChange> changes(JointCase joint, PlanningCase on, NextStep step) {
        if (!(step instanceof NextStep.ChangeSetup || step instanceof NextStep.StateLimit)) {
            return List.of();
        }
        return Stream.concat(
                        SetupChange.finerMeasure(on, joint.measure(), joint.physics()).stream(),
                        SetupChange.of(
                                joint.physics(),
                                StrictMath.exp(joint.posterior().logRatioFor(Estimates.TARGET)))
                                .stream())
                .toList();
    }

    /** Why a step is what it is; of a first test also what it starts from, and of a measure too coarse what would do. */
    private static Reason reason(JointCase joint, NextStep step, List<SetupChange> changes) {
        if (step.reason().code() == Reason.Code.FINER_MEASURE) {
            return changes.stream()
                    .map(SetupChange::measure)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .map(finer -> step.reason().doneBySteps(finer.kilograms()))
                    .orElse(step.reason());
        }
        if (step.reason().code() != Reason.Code.FIRST_TEST) {
            return step.reason();
        }
        double factor = joint.posterior().correctionFactor().median();
        int others = joint.fleet().testedAirframesBut(joint.logged().airframe().id());
        return others > 0
                ? step.reason().startingFrom(others, factor)
                : joint.pool()
                        .map(pool -> step.reason().startingFromOthers(pool.flyers(), factor))
                        .orElse(step.reason());
    }

    private record NextAt(UUID joint) {}

    private record FilmedAt(UUID joint, BigDecimal percent, boolean explained) {}

    private record EvidenceOf(UUID joint) {}

    private record LadderOf(UUID joint, int depth) {}

    /** How far the tests of a joint support a flight charge. */
    EvidenceReport evidence(JointCase joint) {
        return findings.answer(
                joint.fleet(),
                new EvidenceOf(joint.logged().joint().id()),
                () -> EvidenceReport.of(joint.planning(Estimates.TARGET)));
    }

    /** The case of the setup in force at a joint. */
    JointCase joint(FleetSnapshot fleet, UUID jointId) {
        LoggedJoint logged = fleet.joint(jointId);
        return new JointCase(fleet, logged, logged.setup(), findings.posterior(fleet, logged.setup()));
    }

    /**
     * The tests rolled forward over their outcomes.
     *
     * @param depth firings to look ahead, 1 to {@link Ladder#DEEPEST}
     */
    public LadderAdvice ladder(UUID jointId, int depth) {
        return ladder(fleets.current(), jointId, depth);
    }

    /** The tests at a joint of a fleet rolled forward over their outcomes. */
    LadderAdvice ladder(FleetSnapshot fleet, UUID jointId, int depth) {
        return findings.answer(fleet, new LadderOf(jointId, depth), () -> {
            JointCase joint = joint(fleet, jointId);
            Ladder ladder = Ladder.of(joint.planning(Estimates.TARGET), depth);
            return new LadderAdvice(
                    joint.logged().airframe().name(),
                    joint.logged().joint().name(),
                    joint.setup().sheet(),
                    ladder,
                    reason(joint, ladder.root(), next(fleet, jointId).changes()),
                    joint.physics().ceiling(),
                    joint.physics().warnings(),
                    evidence(joint),
                    joint.measure(),
                    joint.basis());
        });
    }

    /**
     * The charge to fly, with the air left out of it.
     *
     * @param reliability chance of separating to aim at
     * @throws ProblemException 409 where the tests support no charge
     */
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
    public FlightReport flight(UUID jointId, double reliability, FlightCase.@Nullable Climb climb) {
        JointCase joint = joint(fleets.current(), jointId);
        FlightAir air = climb == null ? null : FlightAir.of(joint.physics(), climb);
        Ceiling ceiling = air == null ? joint.physics().ceiling() : air.ceiling();
        if (ceiling.chargeKg() <= 0) {
            throw new ProblemException(
                    ProblemType.NO_FLIGHT_CHARGE,
                    "The air trapped in the compartment alone reaches the ceiling at the event: vent the compartment.");
        }
        PlanningCase on = joint.planning(reliability, ceiling.chargeKg());
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
                ceiling,
                air,
                joint.measure(),
                joint.basis());
    }

    /** Whether the model gave a test's outcome less than 2 % before it was seen. */
    public static boolean surprising(GroundTest test) {
        return JointCase.surprising(test);
    }
}
