package org.sunder.airframe;

import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.packing.LoadOutFit;

/**
 * What fits the compartment of one joint.
 *
 * @param joint the joint
 * @param setup the setup in force
 * @param physics of that setup as it stands
 * @param loadOuts each load-out that packs this compartment, worst first; none where the setup itself cannot be
 */
public record JointFit(Joint joint, Setup setup, StoredPhysics physics, List<Packed> loadOuts) {

    /**
     * One load-out in the compartment.
     *
     * @param loadOut the load-out
     * @param fit what fits
     * @param now of the setup in force
     * @param then of the joint with it, or empty where that cannot be
     */
    public record Packed(InstalledLoadOut loadOut, LoadOutFit fit, JointPhysics now, Optional<JointPhysics> then) {}

    /**
     * One load-out in the compartment, with what is pushed in at the joint at another depth.
     *
     * @param loadOut the load-out
     * @param fit what fits
     */
    public record AtDepth(InstalledLoadOut loadOut, LoadOutFit fit) {}

    /** Copies the list. */
    public JointFit {
        loadOuts = List.copyOf(loadOuts);
    }
}
