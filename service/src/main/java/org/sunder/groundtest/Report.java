package org.sunder.groundtest;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.physics.Containment;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Speed;

/**
 * What was seen in the field.
 *
 * @param charge the charge loaded, as measured
 * @param outcome what it did
 * @param damaged whether it broke anything
 * @param speed measured relative speed of the parts, of a separated test
 * @param containment what held the powder
 * @param firedAt when, with the offset of the place
 * @param notes free text
 */
public record Report(
        Mass charge,
        Outcome outcome,
        boolean damaged,
        @Nullable Speed speed,
        @Nullable Containment containment,
        OffsetDateTime firedAt,
        @Nullable String notes) {}
