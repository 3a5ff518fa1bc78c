package org.sunder.advice;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.engine.learning.AirframeLog;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.JointLog;
import org.sunder.engine.learning.SetupLog;
import org.sunder.engine.learning.Trial;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.GroundTests;

/** Reads a flyer's log for the engine; always in the order of ids, so that the same log gives the same answer. */
@Component
class FleetReader {

    private final Airframes airframes;
    private final GroundTests tests;
    private final SetupPhysics physics;

    FleetReader(Airframes airframes, GroundTests tests, SetupPhysics physics) {
        this.airframes = airframes;
        this.tests = tests;
        this.physics = physics;
    }

    FleetPicture read() {
        // Tests first: what they point at was stored before them, so none is missing below whatever is stored
        // meanwhile.
        Map<UUID, List<GroundTest>> byJoint = tests.all().stream().collect(groupingBy(GroundTest::jointId));
        Map<UUID, List<Setup>> setups = airframes.allSetups().stream().collect(groupingBy(Setup::jointId));
        Map<UUID, List<Joint>> joints = airframes.allJoints().stream().collect(groupingBy(Joint::airframeId));
        Map<UUID, List<Trial>> trials = trials(setups, byJoint);
        Map<UUID, FleetPicture.Place> places = new HashMap<>();
        List<AirframeLog> logs = new ArrayList<>();
        for (Airframe airframe : airframes.all()) {
            List<JointLog> jointLogs = new ArrayList<>();
            for (Joint joint : joints.getOrDefault(airframe.id(), List.of())) {
                places.put(joint.id(), new FleetPicture.Place(logs.size(), jointLogs.size()));
                jointLogs.add(new JointLog(setups.getOrDefault(joint.id(), List.of()).stream()
                        .map(setup -> new SetupLog(
                                physics.of(setup).uncertainty().total(), trials.getOrDefault(setup.id(), List.of())))
                        .toList()));
            }
            logs.add(new AirframeLog(jointLogs));
        }
        return new FleetPicture(new FleetLog(logs), places, setups, byJoint);
    }

    private Map<UUID, List<Trial>> trials(Map<UUID, List<Setup>> setups, Map<UUID, List<GroundTest>> byJoint) {
        Map<UUID, JointPhysics> physicsOf = new HashMap<>();
        setups.values().forEach(list -> list.forEach(setup -> physicsOf.put(setup.id(), physics.of(setup))));
        Map<UUID, List<Trial>> trials = new HashMap<>();
        byJoint.values().stream()
                .flatMap(List::stream)
                .filter(GroundTest::counted)
                .forEach(test -> trials.computeIfAbsent(test.setupId(), id -> new ArrayList<>())
                        .add(Trials.of(test.report(), Objects.requireNonNull(physicsOf.get(test.setupId())))));
        return trials;
    }
}
