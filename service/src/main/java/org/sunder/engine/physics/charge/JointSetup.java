package org.sunder.engine.physics.charge;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Cavity;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;

/**
 * A joint as prepared for one test or flight, as stated by the flyer and not yet checked.
 *
 * @param innerDiameter inner diameter at the joint that the pressure acts on
 * @param cavity segments of the compartment from its closed far end to the joint; a nose comes first
 * @param contents what is packed in it
 * @param pins the shear pins; may be empty for a friction fit
 * @param fit friction of the fit
 * @param powder the powder of the charge
 * @param shoulder engaged length of the joint: the stroke of the separation, or null
 * @param forwardMass mass of the part ahead of the joint, or null
 * @param aftMass mass of the part behind the joint, or null
 * @param limit what must never be exceeded, or null
 */
public record JointSetup(
        Length innerDiameter,
        List<CavitySegment> cavity,
        List<Content> contents,
        List<PinSet> pins,
        Fit fit,
        Powder powder,
        @Nullable Length shoulder,
        @Nullable Mass forwardMass,
        @Nullable Mass aftMass,
        @Nullable Limit limit) {

    /** Copies the lists. */
    public JointSetup {
        cavity = List.copyOf(cavity);
        contents = List.copyOf(contents);
        pins = List.copyOf(pins);
    }

    /** The compartment's empty cavity. */
    public Cavity emptyCavity() {
        return new Cavity(cavity);
    }

    /** The intrusion at an index of the contents; an {@link UnsoundSetupException} if there is none. */
    Intrusion intrusion(int content) {
        if (content >= 0 && content < contents.size() && contents.get(content) instanceof Intrusion intrusion) {
            return intrusion;
        }
        throw new UnsoundSetupException(List.of(new SetupFault(
                "contents[" + content + "]", "" + content, "not an intrusion", "the index of an intrusion")));
    }

    /** The same with other contents. */
    public JointSetup withContents(List<Content> others) {
        return new JointSetup(innerDiameter, cavity, others, pins, fit, powder, shoulder, forwardMass, aftMass, limit);
    }

    /** The same with other pins. */
    public JointSetup withPins(List<PinSet> others) {
        return new JointSetup(
                innerDiameter, cavity, contents, others, fit, powder, shoulder, forwardMass, aftMass, limit);
    }

    /** The same with another limit, or null for none. */
    public JointSetup withLimit(@Nullable Limit other) {
        return new JointSetup(
                innerDiameter, cavity, contents, pins, fit, powder, shoulder, forwardMass, aftMass, other);
    }
}
