package org.sunder.advice;

import org.sunder.airframe.Airframe;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.physics.JointPhysics;

/**
 * All that is known of a joint as it is set up now.
 *
 * @param airframe its airframe
 * @param joint the joint
 * @param setup the setup in force
 * @param physics what the setup is in physics
 * @param picture the flyer's whole log
 * @param posterior what the log says about this setup
 */
record JointCase(
        Airframe airframe,
        Joint joint,
        Setup setup,
        JointPhysics physics,
        FleetPicture picture,
        LeafPosterior posterior) {

    /** Charge in kilograms at a log ratio. */
    double charge(double logRatio) {
        return physics.handbookCharge() * StrictMath.exp(logRatio);
    }

    /** What an answer rests on. */
    Basis basis() {
        return new Basis(Basis.MODEL, setup.revision(), picture.counted(joint.id()), picture.countedInFleet());
    }
}
