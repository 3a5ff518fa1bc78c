package org.sunder.advice;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.engine.planning.EvidenceReport;

/** Where every joint of a flyer stands, from one reading of the fleet. */
@Service
public class Standings {

    private final Airframes airframes;
    private final FleetReader reader;
    private final FleetModels models;
    private final SetupPhysics physics;
    private final PlanningCases planning;
    private final CurrentFlyer flyer;

    Standings(
            Airframes airframes,
            FleetReader reader,
            FleetModels models,
            SetupPhysics physics,
            PlanningCases planning,
            CurrentFlyer flyer) {
        this.airframes = airframes;
        this.reader = reader;
        this.models = models;
        this.physics = physics;
        this.planning = planning;
        this.flyer = flyer;
    }

    /** Joints of airframes in use, by airframe, oldest first. */
    @Transactional(readOnly = true)
    public Map<UUID, List<Standing>> byAirframe() {
        FleetPicture picture = reader.read();
        Fleet fleet = models.of(flyer.id(), picture.log());
        Map<UUID, Airframe> active = airframes.all().stream()
                .filter(airframe -> airframe.archivedAt() == null)
                .collect(Collectors.toMap(Airframe::id, Function.identity()));
        return airframes.allJoints().stream()
                .filter(joint -> active.containsKey(joint.airframeId()))
                .map(joint -> standing(Objects.requireNonNull(active.get(joint.airframeId())), joint, picture, fleet))
                .collect(Collectors.groupingBy(standing -> standing.joint().airframeId()));
    }

    private Standing standing(Airframe airframe, Joint joint, FleetPicture picture, Fleet fleet) {
        Setup setup = picture.setup(joint);
        JointCase now =
                new JointCase(airframe, joint, setup, physics.of(setup), picture, fleet.posterior(picture.leaf(setup)));
        return new Standing(
                joint,
                picture.counted(joint.id()),
                now.posterior().correctionFactor(),
                EvidenceReport.of(planning.of(now, Estimates.TARGET)));
    }
}
