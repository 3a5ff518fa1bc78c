package org.sunder.advice;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.sunder.airframe.Airframe;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.SideView;
import org.sunder.problem.ProblemException;

/**
 * A flyer's fleet as a page shows it: all that one of these says is from one reading. Only what is asked for is planned, however
 * many joints the fleet has.
 */
public final class Overview {

    private final FleetSnapshot fleet;
    private final Overviews from;

    Overview(FleetSnapshot fleet, Overviews from) {
        this.fleet = fleet;
        this.from = from;
    }

    /** Every airframe, those put away too. */
    public Collection<Airframe> airframes() {
        return fleet.airframes();
    }

    /** When something was fired last at each airframe that anything was fired at. */
    public Map<UUID, Instant> lastFired() {
        return fleet.joints().stream()
                .filter(joint -> !joint.tests().isEmpty())
                .collect(Collectors.toMap(
                        joint -> joint.airframe().id(),
                        Overview::lastFired,
                        (one, other) -> one.isAfter(other) ? one : other));
    }

    private static Instant lastFired(LoggedJoint joint) {
        return joint.tests().get(joint.tests().size() - 1).report().firedAt().toInstant();
    }

    /**
     * An airframe from the side.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    public SideView view(UUID airframeId) {
        return from.view(fleet, airframeId);
    }

    /** Where the joints of an airframe stand and what to do next at each, oldest first. */
    public List<JointAnswer> joints(UUID airframeId) {
        return fleet.joints().stream()
                .filter(joint -> joint.airframe().id().equals(airframeId))
                .map(joint -> from.answer(fleet, joint))
                .toList();
    }

    /** The tests at a joint rolled forward; see {@link Advising#ladder(UUID, int)}. */
    public LadderAdvice ladder(UUID jointId, int depth) {
        return from.ladder(fleet, jointId, depth);
    }

    /** The charges of a joint on one scale; see {@link ChargeRulers#of(UUID)}. */
    public ChargeRuler ruler(UUID jointId) {
        return from.ruler(fleet, jointId);
    }

    /**
     * Where a joint stands and what to do next.
     *
     * @throws ProblemException 404 where the flyer has none of that id
     */
    public JointAnswer joint(UUID jointId) {
        return from.answer(fleet, fleet.joint(jointId));
    }
}
