package org.sunder.airframe;

import java.time.Instant;
import java.util.UUID;

/**
 * A load-out of an airframe.
 *
 * @param id UUID version 7
 * @param airframeId its airframe
 * @param sheet what was described
 * @param createdAt when it was entered
 * @param version counts its changes
 */
public record InstalledLoadOut(UUID id, UUID airframeId, LoadOutSheet sheet, Instant createdAt, long version) {}
