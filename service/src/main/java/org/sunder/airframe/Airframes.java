package org.sunder.airframe;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.engine.physics.Range;
import org.sunder.engine.quantity.Length;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import org.sunder.web.Cursor;

/** What a flyer does with airframes, joints and setups. Changes run inside the caller's transaction. */
@Service
public class Airframes {

    private static final Range OUTER_DIAMETER = new Range(0.010, 2, "10 mm to 2 m");

    private final AirframeStore store;
    private final SetupPhysics physics;
    private final CurrentFlyer flyer;

    Airframes(AirframeStore store, SetupPhysics physics, CurrentFlyer flyer) {
        this.store = store;
        this.physics = physics;
        this.flyer = flyer;
    }

    /** Enters a new airframe. */
    public Airframe enter(AirframeDetails details) {
        check(details);
        return store.add(flyer.id(), details);
    }

    /**
     * Changes an airframe.
     *
     * @param versionCheck refuses, by throwing, a version that the change is not based on
     */
    public Airframe change(UUID id, LongConsumer versionCheck, AirframeDetails details) {
        Airframe current = getOwn(id);
        versionCheck.accept(current.version());
        check(details);
        return store.change(flyer.id(), id, details);
    }

    /**
     * Refuses, by throwing, what no airframe can be.
     *
     * @throws ProblemException naming the field
     */
    public static void check(AirframeDetails details) {
        Length diameter = details.outerDiameter();
        if (diameter != null && !OUTER_DIAMETER.contains(diameter.metres())) {
            throw ProblemException.invalid(
                    "/outerDiameter",
                    diameter.value() + " " + diameter.unit(),
                    "the outer diameter is out of bounds",
                    OUTER_DIAMETER.text());
        }
    }

    /** Puts an airframe away; its log stays and still teaches the fleet. */
    public void archive(UUID id, LongConsumer versionCheck) {
        Airframe current = getOwn(id);
        versionCheck.accept(current.version());
        store.archive(flyer.id(), id);
    }

    /** Takes an airframe back into use; where it is in use already nothing changes. */
    public Airframe bringBack(UUID id) {
        Airframe airframe = get(id);
        return airframe.archivedAt() == null ? airframe : store.bringBack(flyer.id(), id);
    }

    /**
     * Deletes an airframe with its joints for good.
     *
     * @param versionCheck refuses, by throwing, a version that this is not based on
     */
    public void remove(UUID id, LongConsumer versionCheck) {
        Airframe airframe = notTheExample(get(id));
        versionCheck.accept(airframe.version());
        jointsOf(id).forEach(joint -> store.removeJoint(flyer.id(), joint.id()));
        store.removeAirframe(flyer.id(), id);
    }

    /**
     * Deletes a joint with its setups for good.
     *
     * @param versionCheck refuses, by throwing, a version that this is not based on
     */
    public void removeJoint(UUID id, LongConsumer versionCheck) {
        Joint joint = getJoint(id);
        getActive(joint.airframeId());
        versionCheck.accept(joint.version());
        store.removeJoint(flyer.id(), id);
    }

    /** The airframe, archived or not. */
    public Airframe get(UUID id) {
        return store.findAirframe(flyer.id(), id).orElseThrow(() -> ProblemException.notFound("airframe", id));
    }

    /** A page of airframes not archived, newest first, with one to spare. */
    public List<Airframe> page(Cursor cursor, int limit) {
        return store.airframesAfter(flyer.id(), cursor, limit + 1);
    }

    /** A page of airframes put away, newest first, with one to spare. */
    public List<Airframe> putAway(Cursor cursor, int limit) {
        return store.putAwayAfter(flyer.id(), cursor, limit + 1);
    }

    /** Every airframe of the flyer, archived ones too, in order of id. */
    public List<Airframe> all() {
        return store.allAirframes(flyer.id());
    }

    /** Adds a joint with its first setup, after the setup proved sound. */
    public Joint addJoint(UUID airframeId, String name, DeploymentEvent event, SetupSheet sheet) {
        getActive(airframeId);
        return store.addJoint(flyer.id(), airframeId, name, event, physics.resolve(sheet, "/setup"));
    }

    /** Adds a joint with the setup that another one has in force; what the stock says today comes into force. */
    Joint copyJoint(Joint from, UUID airframeId, String name) {
        getActive(airframeId);
        SetupSheet sheet = currentSetup(from).sheet();
        return store.addJoint(flyer.id(), airframeId, name, from.event(), physics.resolve(sheet, sheet));
    }

    /** The joint. */
    public Joint getJoint(UUID id) {
        return store.findJoint(flyer.id(), id).orElseThrow(() -> ProblemException.notFound("joint", id));
    }

    /** The joints of an airframe, oldest first. */
    public List<Joint> jointsOf(UUID airframeId) {
        get(airframeId);
        return store.jointsOf(flyer.id(), airframeId);
    }

    /** Every joint of the flyer in order of id. */
    public List<Joint> allJoints() {
        return store.allJoints(flyer.id());
    }

    /** Makes the next revision of a joint's setup, after it proved sound. */
    public Setup changeSetup(UUID jointId, LongConsumer versionCheck, SetupSheet sheet) {
        Joint joint = getJoint(jointId);
        getActive(joint.airframeId());
        versionCheck.accept(joint.version());
        return store.addSetup(
                flyer.id(), jointId, physics.resolve(sheet, currentSetup(joint).sheet()));
    }

    /** The setups of a joint, newest first. */
    public List<Setup> setupsOf(UUID jointId) {
        getJoint(jointId);
        return store.setupsOf(flyer.id(), jointId);
    }

    /** Every setup of the flyer in order of joint and revision. */
    public List<Setup> allSetups() {
        return store.allSetups(flyer.id());
    }

    /** The setup in force. */
    public Setup currentSetup(Joint joint) {
        return getSetup(joint.id(), joint.currentRevision());
    }

    /** The setups in force at the joints of an airframe, by joint. */
    public Map<UUID, Setup> setupsInForce(UUID airframeId) {
        return store.setupsInForce(flyer.id(), airframeId).stream()
                .collect(Collectors.toMap(Setup::jointId, setup -> setup));
    }

    /** A revision of a joint's setup. */
    public Setup getSetup(UUID jointId, int revision) {
        return store.findSetup(flyer.id(), jointId, revision)
                .orElseThrow(() -> ProblemException.invalid(
                        "/setupRevision",
                        revision,
                        "this joint has no such revision",
                        "a revision of the joint's setup"));
    }

    private Airframe getOwn(UUID id) {
        return notTheExample(getActive(id));
    }

    private static Airframe notTheExample(Airframe airframe) {
        if (airframe.example()) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "The example keeps its name, so that nobody takes it for a rocket of his own. The first page takes it away.");
        }
        return airframe;
    }

    private Airframe getActive(UUID id) {
        Airframe airframe = get(id);
        if (airframe.archivedAt() != null) {
            throw new ProblemException(ProblemType.CONFLICT, "The airframe is archived; it can no longer be changed.");
        }
        return airframe;
    }
}
