package org.sunder.access;

import java.time.Instant;
import java.util.UUID;

/**
 * A person who owns airframes and holds keys.
 *
 * @param id UUID version 7
 * @param name what the club calls them
 * @param createdAt when they were entered
 */
public record Flyer(UUID id, String name, Instant createdAt) {}
