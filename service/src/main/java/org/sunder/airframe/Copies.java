package org.sunder.airframe;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.sunder.problem.ProblemException;

/**
 * Joints, airframes and load-outs entered once more under another name: everything of the setups in force is carried, and no
 * test. Changes run inside the caller's transaction.
 */
@Service
public class Copies {

    private final Airframes airframes;
    private final LoadOuts loadOuts;

    Copies(Airframes airframes, LoadOuts loadOuts) {
        this.airframes = airframes;
        this.loadOuts = loadOuts;
    }

    /**
     * A joint, to the same airframe or another one.
     *
     * @throws ProblemException 422 where its setup names a powder or batch that is no longer in use
     */
    public Joint joint(UUID jointId, UUID airframeId, String name) {
        return airframes.copyJoint(airframes.getJoint(jointId), airframeId, name);
    }

    /**
     * An airframe with its joints and load-outs.
     *
     * @throws ProblemException 422 where a setup names a powder or batch that is no longer in use
     */
    public Airframe airframe(UUID id, String name) {
        Airframe from = airframes.get(id);
        Airframe made = airframes.enter(
                new AirframeDetails(name, from.units(), from.outerDiameter(), from.example() ? null : from.notes()));
        Map<UUID, UUID> joints = new HashMap<>();
        for (Joint joint : airframes.jointsOf(id)) {
            joints.put(
                    joint.id(),
                    airframes.copyJoint(joint, made.id(), joint.name()).id());
        }
        for (InstalledLoadOut loadOut : loadOuts.of(id)) {
            loadOuts.add(made.id(), moved(loadOut.sheet(), joints));
        }
        return made;
    }

    /** A load-out of the same airframe. */
    public InstalledLoadOut loadOut(UUID id, String name) {
        InstalledLoadOut from = loadOuts.get(id);
        LoadOutSheet sheet = from.sheet();
        return loadOuts.add(
                from.airframeId(), new LoadOutSheet(name, sheet.motorCase(), sheet.compartments(), sheet.note()));
    }

    private static LoadOutSheet moved(LoadOutSheet sheet, Map<UUID, UUID> joints) {
        List<LoadOutSheet.CompartmentSheet> compartments = sheet.compartments().stream()
                .map(packed -> new LoadOutSheet.CompartmentSheet(
                        joints.getOrDefault(packed.jointId(), packed.jointId()), packed.items()))
                .toList();
        return new LoadOutSheet(sheet.name(), sheet.motorCase(), compartments, sheet.note());
    }
}
