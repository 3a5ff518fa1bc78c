package org.sunder.airframe;

import java.time.Instant;
import java.util.UUID;

/**
 * A place where two sections are meant to part.
 *
 * @param id UUID version 7
 * @param airframeId its airframe
 * @param name e.g. "nose to bay"
 * @param event what parts here in flight
 * @param currentRevision revision of the setup in force
 * @param createdAt when it was entered
 * @param version counts its changes
 */
public record Joint(
        UUID id,
        UUID airframeId,
        String name,
        DeploymentEvent event,
        int currentRevision,
        Instant createdAt,
        long version) {

    /** The same with another revision in force. */
    public Joint inForce(int revision) {
        return new Joint(id, airframeId, name, event, revision, createdAt, version);
    }
}
