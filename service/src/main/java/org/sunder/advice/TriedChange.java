package org.sunder.advice;

import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Setup;

/**
 * A setup looked at and not stored.
 *
 * @param before the setup in force, or null where that cannot be read
 * @param after what would stand were the tried one in force
 * @param setup the tried one, with the revision that it would have; the one in force where nothing differs
 * @param changed whether it describes anything else than the one in force; a note is no difference
 */
public record TriedChange(@Nullable JointAnswer before, JointAnswer after, Setup setup, boolean changed) {}
