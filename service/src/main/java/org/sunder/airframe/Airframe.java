package org.sunder.airframe;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;

/**
 * One rocket as built.
 *
 * @param id UUID version 7
 * @param name what its flyer calls it
 * @param units units of its answers
 * @param outerDiameter outer diameter of the body, where given
 * @param notes free text
 * @param createdAt when it was entered
 * @param archivedAt when it was put away; its log stays
 * @param version counts its changes
 */
public record Airframe(
        UUID id,
        String name,
        UnitSystem units,
        @Nullable Length outerDiameter,
        @Nullable String notes,
        Instant createdAt,
        @Nullable Instant archivedAt,
        long version) {

    /** The id of the invented rocket that every flyer may have to look around in: the same for all. */
    public static final UUID EXAMPLE = UUID.fromString("01969528-c800-7000-8000-53616e640001");

    /** Whether this is the invented rocket: it is called an example wherever it is named, and teaches no other. */
    public boolean example() {
        return id.equals(EXAMPLE);
    }
}
