package org.sunder.advice;

import org.jspecify.annotations.Nullable;

/**
 * A setup looked at and not stored.
 *
 * @param before the setup in force, or null where that cannot be read
 * @param after what would stand were the tried one in force
 * @param revision that it would have
 * @param changed whether it differs from the one in force at all
 */
public record TriedChange(@Nullable JointAnswer before, JointAnswer after, int revision, boolean changed) {}
