package org.sunder.advice;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.planning.EvidenceReport;

/** Where every joint of a flyer stands, from one reading of the fleet. */
@Service
public class Standings {

    private final FleetSnapshots fleets;
    private final Advising advising;

    Standings(FleetSnapshots fleets, Advising advising) {
        this.fleets = fleets;
        this.advising = advising;
    }

    /** Where the joints of some airframes in use stand, by airframe, oldest first; no others are worked out. */
    public Map<UUID, List<Standing>> of(Collection<UUID> airframes) {
        FleetSnapshot fleet = fleets.current();
        return fleet.joints().stream()
                .filter(joint -> joint.airframe().archivedAt() == null
                        && airframes.contains(joint.airframe().id()))
                .map(joint -> standing(fleet, joint))
                .collect(Collectors.groupingBy(standing -> standing.joint().airframeId()));
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
