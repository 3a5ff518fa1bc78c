package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;

/** A joint with the setup in force. */
@Schema(name = "Joint", description = "A joint with the setup in force.")
record JointView(
        UUID id,
        UUID airframeId,
        String name,
        DeploymentEvent event,
        Instant createdAt,
        @Schema(example = "1") int setupRevision,
        SetupSheet setup) {

    static JointView of(Joint joint, Setup setup) {
        return new JointView(
                joint.id(),
                joint.airframeId(),
                joint.name(),
                joint.event(),
                joint.createdAt(),
                setup.revision(),
                setup.sheet());
    }
}
