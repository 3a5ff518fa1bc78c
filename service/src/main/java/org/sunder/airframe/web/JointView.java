package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.StoredPhysics;
import org.sunder.engine.physics.Warning;

/** A joint with the setup in force. */
@Schema(name = "Joint", description = "A joint with the setup in force.")
record JointView(
        UUID id,
        UUID airframeId,
        String name,
        DeploymentEvent event,
        Instant createdAt,
        @Schema(example = "1") int setupRevision,

        @Schema(description = "The setup in force; left out where its row cannot be read.") @Nullable SetupSheet setup,

        @Schema(description = "Why the setup in force, as stored, cannot be read or cannot be; left out where it can.")
        @Nullable String finding,

        @Schema(description = "What to mind of the setup in force.")
        List<Warning> warnings) {

    static JointView of(Joint joint, Setup setup, StoredPhysics physics) {
        return new JointView(
                joint.id(),
                joint.airframeId(),
                joint.name(),
                joint.event(),
                joint.createdAt(),
                setup.revision(),
                setup.finding() == null ? setup.sheet() : null,
                physics.finding().orElse(null),
                physics.warnings());
    }
}
