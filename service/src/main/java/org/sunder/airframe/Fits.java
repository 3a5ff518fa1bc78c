package org.sunder.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.LoadOutSheet.CompartmentSheet;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.charge.JointPhysics;

/** Whether every load-out of an airframe fits, and what it does to the joints. */
@Service
public class Fits {

    private final Airframes airframes;
    private final LoadOuts loadOuts;
    private final SetupPhysics physics;

    Fits(Airframes airframes, LoadOuts loadOuts, SetupPhysics physics) {
        this.airframes = airframes;
        this.loadOuts = loadOuts;
        this.physics = physics;
    }

    /** Every joint of the airframe with every load-out that packs its compartment. */
    @Transactional(readOnly = true)
    public List<JointFit> of(UUID airframeId) {
        List<InstalledLoadOut> installed = loadOuts.of(airframeId);
        return airframes.jointsOf(airframeId).stream()
                .map(joint -> of(joint, installed))
                .toList();
    }

    private JointFit of(Joint joint, List<InstalledLoadOut> installed) {
        List<InstalledLoadOut> packing = new ArrayList<>();
        List<CompartmentSheet> packed = new ArrayList<>();
        for (InstalledLoadOut loadOut : installed) {
            for (CompartmentSheet compartment : loadOut.sheet().compartments()) {
                if (compartment.jointId().equals(joint.id())) {
                    packing.add(loadOut);
                    packed.add(compartment);
                }
            }
        }
        Setup setup = airframes.currentSetup(joint);
        StoredPhysics stored = physics.find(setup);
        if (!(stored instanceof StoredPhysics.Sound sound)) {
            return new JointFit(joint, setup, stored, List.of());
        }
        Compartment compartment = new Compartment(setup.sheet());
        List<JointFit.Packed> fits = compartment.fit(packed).stream()
                .map(fit -> {
                    int i = Integer.parseInt(fit.loadOut());
                    return new JointFit.Packed(
                            packing.get(i), fit, sound.physics(), findPhysics(compartment, packed.get(i)));
                })
                .toList();
        return new JointFit(joint, setup, stored, fits);
    }

    private static Optional<JointPhysics> findPhysics(Compartment compartment, CompartmentSheet packed) {
        try {
            return Optional.of(compartment.filledWith(packed));
        } catch (UnsoundSetupException e) {
            return Optional.empty();
        }
    }
}
