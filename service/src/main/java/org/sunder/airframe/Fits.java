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
import org.sunder.engine.physics.packing.LoadOutFit;
import org.sunder.engine.quantity.Length;

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

    /**
     * Every load-out that packs the compartment of a joint, where what is pushed in there reaches to another depth; worst first.
     *
     * @param deepest how far something is pushed in at the joint at most
     * @throws UnsoundSetupException where that is deeper than the compartment
     */
    @Transactional(readOnly = true)
    public List<JointFit.AtDepth> at(Joint joint, Length deepest) {
        Packing packing = packing(joint, loadOuts.of(joint.airframeId()));
        return new Compartment(airframes.currentSetup(joint).sheet())
                .fit(packing.sheets(), deepest).stream()
                        .map(fit -> new JointFit.AtDepth(packing.of(fit), fit))
                        .toList();
    }

    /** The load-outs that pack a compartment, and what each has there. */
    private record Packing(List<InstalledLoadOut> loadOuts, List<CompartmentSheet> sheets) {

        /** Each fit is named by its position. */
        InstalledLoadOut of(LoadOutFit fit) {
            return loadOuts.get(Integer.parseInt(fit.loadOut()));
        }
    }

    private static Packing packing(Joint joint, List<InstalledLoadOut> installed) {
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
        return new Packing(packing, packed);
    }

    private JointFit of(Joint joint, List<InstalledLoadOut> installed) {
        Packing packing = packing(joint, installed);
        List<CompartmentSheet> packed = packing.sheets();
        Setup setup = airframes.currentSetup(joint);
        StoredPhysics stored = physics.find(setup);
        if (!(stored instanceof StoredPhysics.Sound sound)) {
            return new JointFit(joint, setup, stored, List.of());
        }
        Compartment compartment = new Compartment(setup.sheet());
        List<JointFit.Packed> fits = compartment.fit(packed).stream()
                .map(fit -> {
                    CompartmentSheet sheet = packed.get(Integer.parseInt(fit.loadOut()));
                    return new JointFit.Packed(packing.of(fit), fit, sound.physics(), findPhysics(compartment, sheet));
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
