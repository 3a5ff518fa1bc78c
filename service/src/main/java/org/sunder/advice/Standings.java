package org.sunder.advice;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.problem.ProblemException;

/** Where every joint of a flyer stands, from one reading of the fleet. */
@Service
public class Standings {

    private final FleetSnapshots fleets;
    private final Advising advising;
    private final ChargeRulers rulers;

    Standings(FleetSnapshots fleets, Advising advising, ChargeRulers rulers) {
        this.fleets = fleets;
        this.advising = advising;
        this.rulers = rulers;
    }

    /** Joints of airframes in use, by airframe, oldest first. */
    public Map<UUID, List<Standing>> byAirframe() {
        FleetSnapshot fleet = fleets.current();
        return fleet.joints().stream()
                .filter(joint -> joint.airframe().archivedAt() == null)
                .map(joint -> standing(fleet, joint))
                .collect(Collectors.groupingBy(standing -> standing.joint().airframeId()));
    }

    /**
     * Where the joints of some airframes stand and what to do next at each, in use or put away, oldest first. Only these are
     * planned, however many the fleet has.
     */
    public Map<UUID, List<JointAnswer>> answers(Collection<UUID> airframes) {
        FleetSnapshot fleet = fleets.current();
        return fleet.joints().stream()
                .filter(joint -> airframes.contains(joint.airframe().id()))
                .map(joint -> answer(fleet, joint))
                .collect(Collectors.groupingBy(
                        answer -> answer.standing().joint().airframeId()));
    }

    /**
     * Where a joint stands and what to do next.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    public JointAnswer answer(UUID jointId) {
        FleetSnapshot fleet = fleets.current();
        return answer(fleet, fleet.joint(jointId));
    }

    private JointAnswer answer(FleetSnapshot fleet, LoggedJoint logged) {
        boolean sound = logged.finding().isEmpty();
        UUID id = logged.joint().id();
        return new JointAnswer(
                standing(fleet, logged),
                sound ? advising.next(fleet, id) : null,
                sound ? rulers.of(fleet, id) : null,
                logged.tests());
    }

    /** When something was fired last at each airframe that anything was fired at. */
    public Map<UUID, Instant> lastFired() {
        return fleets.current().joints().stream()
                .flatMap(joint -> joint.tests().stream()
                        .map(test -> Map.entry(
                                joint.airframe().id(), test.report().firedAt().toInstant())))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, Map.Entry::getValue, (one, other) -> one.isAfter(other) ? one : other));
    }

    /** Where a joint of a fleet stands. */
    Standing standing(FleetSnapshot fleet, LoggedJoint logged) {
        if (logged.finding().isPresent()) {
            return new Standing(
                    logged.joint(),
                    logged.counted(),
                    FleetCorrections.BEFORE_ANY_TEST,
                    new EvidenceReport(Evidence.NONE, logged.finding().get(), "Describe the setup anew."));
        }
        JointCase now = advising.joint(fleet, logged.joint().id());
        return new Standing(
                logged.joint(), logged.counted(), now.posterior().correctionFactor(), advising.evidence(now));
    }
}
