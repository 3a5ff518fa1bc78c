package org.sunder.airframe;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An immutable revision of a joint as prepared for a test or a flight.
 *
 * @param id UUID version 7
 * @param jointId its joint
 * @param revision 1, 2, 3, …
 * @param sheet what was described
 * @param createdAt when it came into force
 * @param finding why the stored document cannot be read, for people; then the sheet describes nothing. Null where it can
 */
public record Setup(
        UUID id,
        UUID jointId,
        int revision,
        SetupSheet sheet,
        Instant createdAt,
        @Nullable String finding) {}
