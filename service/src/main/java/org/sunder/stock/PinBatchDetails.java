package org.sunder.stock;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.retention.PinThread;

/**
 * What a flyer says about a batch of pins and may change.
 *
 * @param name what it is called
 * @param thread of its pins
 * @param lot the maker's lot
 * @param note free text, e.g. material and colour
 */
public record PinBatchDetails(
        String name,
        PinThread thread,
        @Nullable String lot,
        @Nullable String note) {}
