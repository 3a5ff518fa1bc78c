/**
 * The joint as set up: what it takes to part it, what must not be exceeded, and how fast it parts.
 *
 * <p>{@link JointPhysics} is the main entry; beside it stand the checks of one thing, such as {@link InsertionTable} and {@link
 * HarnessShock}.
 */
@NullMarked
package org.sunder.engine.physics.charge;

import org.jspecify.annotations.NullMarked;
