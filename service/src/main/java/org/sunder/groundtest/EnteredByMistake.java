package org.sunder.groundtest;

import java.util.List;
import java.util.UUID;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.Joint;
import org.sunder.airframe.LoadOuts;
import org.sunder.persistence.FleetVersions;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Deletes for good what was entered by mistake: a joint or an airframe at which nothing was ever fired, on the ground or in
 * flight, not even a test that is void. What has a log stays. Changes run inside the caller's transaction.
 */
@Service
public class EnteredByMistake {

    private final Airframes airframes;
    private final LoadOuts loadOuts;
    private final GroundTests tests;
    private final FleetVersions versions;
    private final CurrentFlyer flyer;

    EnteredByMistake(
            Airframes airframes, LoadOuts loadOuts, GroundTests tests, FleetVersions versions, CurrentFlyer flyer) {
        this.airframes = airframes;
        this.loadOuts = loadOuts;
        this.tests = tests;
        this.versions = versions;
        this.flyer = flyer;
    }

    /**
     * What hangs on a joint or an airframe.
     *
     * @param fired firings logged: with any of them it stays
     * @param joints names of the joints that would go
     * @param setups setups that would go
     * @param loadOuts names of the load-outs that would go
     * @param emptied names of the load-outs that would stay and no longer fill the joint
     */
    public record Along(int fired, List<String> joints, int setups, List<String> loadOuts, List<String> emptied) {

        public Along {
            joints = List.copyOf(joints);
            loadOuts = List.copyOf(loadOuts);
            emptied = List.copyOf(emptied);
        }

        /** Why all of it stays, or null where it may go. */
        public @Nullable String stays() {
            return fired == 0
                    ? null
                    : (fired == 1 ? "One firing is" : fired + " firings are")
                            + " logged there, and a log is never deleted: void tests stay in it too. What went wrong can"
                            + " be made void, and a rocket that is no longer flown be put away.";
        }
    }

    /** What would go along with a joint. */
    public Along withJoint(UUID id) {
        Joint joint = airframes.getJoint(id);
        List<InstalledLoadOut> filling = filling(joint);
        return new Along(
                tests.of(List.of(id)).size(),
                List.of(),
                airframes.setupsOf(id).size(),
                names(filling.stream().filter(EnteredByMistake::fillsOne).toList()),
                names(filling.stream().filter(loadOut -> !fillsOne(loadOut)).toList()));
    }

    /** What would go along with an airframe. */
    public Along withAirframe(UUID id) {
        List<Joint> joints = airframes.jointsOf(id);
        return new Along(
                tests.of(joints.stream().map(Joint::id).toList()).size(),
                joints.stream().map(Joint::name).toList(),
                joints.stream()
                        .mapToInt(joint -> airframes.setupsOf(joint.id()).size())
                        .sum(),
                names(loadOuts.of(id)),
                List.of());
    }

    /**
     * Deletes a joint, its setups, and what load-outs have in it.
     *
     * @param versionCheck refuses, by throwing, a version that this is not based on
     * @throws ProblemException 409 where anything was fired at it, or its airframe is put away
     */
    public void removeJoint(UUID id, LongConsumer versionCheck) {
        versions.advance(flyer.id()); // nothing is logged from here on until this is committed
        Joint joint = airframes.getJoint(id);
        refuseWithALog(withJoint(id));
        filling(joint).forEach(loadOut -> loadOuts.without(loadOut, id));
        airframes.removeJoint(id, versionCheck);
    }

    /**
     * Deletes an airframe, its joints and load-outs.
     *
     * @param versionCheck refuses, by throwing, a version that this is not based on
     * @throws ProblemException 409 where anything was fired at it
     */
    public void removeAirframe(UUID id, LongConsumer versionCheck) {
        versions.advance(flyer.id()); // as above
        Airframe airframe = airframes.get(id);
        refuseWithALog(withAirframe(airframe.id()));
        loadOuts.removeAll(id);
        airframes.remove(id, versionCheck);
    }

    private static void refuseWithALog(Along along) {
        String stays = along.stays();
        if (stays != null) {
            throw new ProblemException(ProblemType.CONFLICT, stays);
        }
    }

    private List<InstalledLoadOut> filling(Joint joint) {
        return loadOuts.of(joint.airframeId()).stream()
                .filter(loadOut -> loadOut.sheet().compartments().stream()
                        .anyMatch(packed -> packed.jointId().equals(joint.id())))
                .toList();
    }

    private static boolean fillsOne(InstalledLoadOut loadOut) {
        return loadOut.sheet().compartments().size() == 1;
    }

    private static List<String> names(List<InstalledLoadOut> loadOuts) {
        return loadOuts.stream().map(loadOut -> loadOut.sheet().name()).toList();
    }
}
