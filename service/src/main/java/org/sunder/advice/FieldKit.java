package org.sunder.advice;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Joint;
import org.sunder.engine.physics.Warning;
import org.sunder.groundtest.GroundTest;
import org.sunder.picture.ChargeRuler;

/**
 * All that a phone needs to work without network.
 *
 * @param joints of airframes in use, the one that something happened at last first
 * @param left how many more joints there are
 * @param films how good the speeds of the flyer's films are, in percent; null where nothing is filmed
 */
public record FieldKit(
        List<KitJoint> joints, int left, @Nullable BigDecimal films) {

    public FieldKit {
        joints = List.copyOf(joints);
    }

    /**
     * A joint.
     *
     * @param airframe its airframe
     * @param joint the joint
     * @param next what to do next
     * @param ladder the tests rolled forward; null where it was not asked for
     * @param ruler its charges on one scale
     * @param tests its last firings, whoever logged them, newest first
     * @param flags what a person should know of its setup
     */
    public record KitJoint(
            Airframe airframe,
            Joint joint,
            NextAdvice next,
            @Nullable LadderAdvice ladder,
            ChargeRuler ruler,
            List<GroundTest> tests,
            List<Warning> flags) {

        public KitJoint {
            tests = List.copyOf(tests);
            flags = List.copyOf(flags);
        }
    }

    /**
     * What is asked for.
     *
     * @param joint only this joint, or null for all
     * @param depth firings to look ahead, 0 for none
     * @param most how many joints at most
     */
    public record Extent(@Nullable UUID joint, int depth, int most) {}

    /** A word that changes with anything in the kit of a fleet. */
    static String tag(FleetSnapshot fleet, Extent extent) {
        StringBuilder text = new StringBuilder(Basis.MODEL + fleet.flyer() + fleet.version() + extent);
        for (LoggedJoint joint : fleet.joints()) {
            text.append(joint.setup().id());
            int count = joint.tests().size();
            text.append(count > 0 ? joint.tests().get(count - 1).id() : "");
        }
        return UUID.nameUUIDFromBytes(text.toString().getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
