package org.sunder.airframe;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.sunder.web.Cursor;

/** Where airframes, joints and setups are kept; every question is asked for one flyer. */
public interface AirframeStore {

    /** Stores a new airframe. */
    Airframe add(UUID flyer, AirframeDetails details);

    Airframe change(UUID flyer, UUID id, AirframeDetails details);

    void archive(UUID flyer, UUID id);

    Airframe bringBack(UUID flyer, UUID id);

    /** Deletes an airframe for good; it must have no joint. */
    void removeAirframe(UUID flyer, UUID id);

    /** Deletes a joint and its setups for good; nothing may have been fired at it. */
    void removeJoint(UUID flyer, UUID id);

    Optional<Airframe> findAirframe(UUID flyer, UUID id);

    /** Airframes in use, newest first. */
    List<Airframe> airframesAfter(UUID flyer, Cursor cursor, int limit);

    /** Airframes put away, newest first. */
    List<Airframe> putAwayAfter(UUID flyer, Cursor cursor, int limit);

    /** All airframes of a flyer, archived ones too: what they taught still counts. In order of id. */
    List<Airframe> allAirframes(UUID flyer);

    Joint addJoint(UUID flyer, UUID airframeId, String name, DeploymentEvent event, SetupSheet sheet);

    Optional<Joint> findJoint(UUID flyer, UUID id);

    List<Joint> jointsOf(UUID flyer, UUID airframeId);

    /** All joints of a flyer in order of id. */
    List<Joint> allJoints(UUID flyer);

    Setup addSetup(UUID flyer, UUID jointId, SetupSheet sheet);

    /** All setups of a joint, newest first. */
    List<Setup> setupsOf(UUID flyer, UUID jointId);

    /** A revision of a joint's setup. */
    Optional<Setup> findSetup(UUID flyer, UUID jointId, int revision);

    /** The setups in force at the joints of an airframe. */
    List<Setup> setupsInForce(UUID flyer, UUID airframeId);

    /** All setups of a flyer in order of joint and revision. */
    List<Setup> allSetups(UUID flyer);
}
