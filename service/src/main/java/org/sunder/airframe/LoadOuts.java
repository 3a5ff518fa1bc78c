package org.sunder.airframe;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What a flyer does with load-outs. Changes run inside the caller's transaction. */
@Service
public class LoadOuts {

    /** Most load-outs of an airframe. */
    public static final int MOST = 50;

    private final LoadOutStore store;
    private final Airframes airframes;
    private final CurrentFlyer flyer;

    LoadOuts(LoadOutStore store, Airframes airframes, CurrentFlyer flyer) {
        this.store = store;
        this.airframes = airframes;
        this.flyer = flyer;
    }

    /** Adds a load-out; whether it fits is another question. */
    public InstalledLoadOut add(UUID airframeId, LoadOutSheet sheet) {
        requireActive(airframeId);
        check(airframeId, sheet);
        if (of(airframeId).size() >= MOST) {
            throw new ProblemException(ProblemType.CONFLICT, "An airframe takes " + MOST + " load-outs at most.");
        }
        return store.add(flyer.id(), airframeId, sheet);
    }

    /**
     * Changes a load-out.
     *
     * @param versionCheck refuses, by throwing, a version that the change is not based on
     */
    public InstalledLoadOut change(UUID id, LongConsumer versionCheck, LoadOutSheet sheet) {
        InstalledLoadOut current = get(id);
        requireActive(current.airframeId());
        versionCheck.accept(current.version());
        check(current.airframeId(), sheet);
        return store.change(flyer.id(), id, sheet);
    }

    /** Removes a load-out; setups and tests do not depend on it. */
    public void remove(UUID id, LongConsumer versionCheck) {
        InstalledLoadOut current = get(id);
        requireActive(current.airframeId());
        versionCheck.accept(current.version());
        store.remove(flyer.id(), id);
    }

    /** Takes a joint out of a load-out, or the load-out itself away where it fills no other. */
    public void without(InstalledLoadOut loadOut, UUID jointId) {
        LoadOutSheet sheet = loadOut.sheet();
        List<LoadOutSheet.CompartmentSheet> others = sheet.compartments().stream()
                .filter(packed -> !packed.jointId().equals(jointId))
                .toList();
        if (others.isEmpty()) {
            store.remove(flyer.id(), loadOut.id());
        } else {
            store.change(
                    flyer.id(), loadOut.id(), new LoadOutSheet(sheet.name(), sheet.motorCase(), others, sheet.note()));
        }
    }

    /** Takes every load-out of an airframe away. */
    public void removeAll(UUID airframeId) {
        of(airframeId).forEach(loadOut -> store.remove(flyer.id(), loadOut.id()));
    }

    /** The load-out. */
    public InstalledLoadOut get(UUID id) {
        return store.find(flyer.id(), id).orElseThrow(() -> ProblemException.notFound("load-out", id));
    }

    /** The load-outs of an airframe, oldest first. */
    public List<InstalledLoadOut> of(UUID airframeId) {
        airframes.get(airframeId);
        return store.of(flyer.id(), airframeId);
    }

    /**
     * Refuses, by throwing, a load-out that came in otherwise than by its call and that the call would refuse.
     *
     * @throws ProblemException naming every fault by its pointer in the sheet
     */
    public void checkStored(UUID id) {
        InstalledLoadOut loadOut = get(id);
        check(loadOut.airframeId(), loadOut.sheet());
    }

    private void requireActive(UUID airframeId) {
        if (airframes.get(airframeId).archivedAt() != null) {
            throw new ProblemException(ProblemType.CONFLICT, "The airframe is archived; it can no longer be changed.");
        }
    }

    private void check(UUID airframeId, LoadOutSheet sheet) {
        Map<UUID, Joint> joints =
                airframes.jointsOf(airframeId).stream().collect(Collectors.toMap(Joint::id, Function.identity()));
        Set<UUID> seen = new HashSet<>();
        for (int i = 0; i < sheet.compartments().size(); i++) {
            LoadOutSheet.CompartmentSheet packed = sheet.compartments().get(i);
            String path = "compartments[" + i + "]";
            EngineFaults.named(inBody -> inBody.replace("loadOuts[0]", path), () -> {
                Joint joint = joints.get(packed.jointId());
                if (joint == null || !seen.add(packed.jointId())) {
                    String detail = joint == null ? "no such joint of this airframe" : "this joint is named twice";
                    throw new UnsoundSetupException(List.of(new SetupFault(
                            path + ".jointId",
                            packed.jointId().toString(),
                            detail,
                            "each joint of the airframe once")));
                }
                Compartment compartment =
                        new Compartment(airframes.currentSetup(joint).sheet());
                return compartment.fit(List.of(packed));
            });
        }
    }
}
