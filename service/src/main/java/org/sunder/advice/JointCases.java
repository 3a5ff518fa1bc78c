package org.sunder.advice;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;

/** Builds the case of a joint from the log, within one view of the database. */
@Component
class JointCases {

    private final Airframes airframes;
    private final FleetReader reader;
    private final SetupPhysics physics;
    private final FleetModels models;
    private final CurrentFlyer flyer;

    JointCases(Airframes airframes, FleetReader reader, SetupPhysics physics, FleetModels models, CurrentFlyer flyer) {
        this.airframes = airframes;
        this.reader = reader;
        this.physics = physics;
        this.models = models;
        this.flyer = flyer;
    }

    /** The case of the setup in force. */
    @Transactional(readOnly = true)
    public JointCase current(UUID jointId) {
        Joint joint = airframes.getJoint(jointId);
        return of(joint, airframes.currentSetup(joint));
    }

    /** The case of a given revision. */
    @Transactional(readOnly = true)
    public JointCase at(UUID jointId, int revision) {
        return of(airframes.getJoint(jointId), airframes.getSetup(jointId, revision));
    }

    private JointCase of(Joint joint, Setup setup) {
        FleetPicture picture = reader.read();
        Fleet fleet = models.of(flyer.id(), picture.log());
        return new JointCase(
                airframes.get(joint.airframeId()),
                joint,
                setup,
                physics.of(setup),
                picture,
                fleet.posterior(picture.leaf(setup)));
    }
}
