/**
 * What the setup of a joint is and what it takes to part it, in rooms by subject; here stands what they share: how a fault is
 * told, what is allowed, and a warning.
 *
 * <ul>
 *   <li>{@link org.sunder.engine.physics.cavity}: the compartment, what fills it, and the gas volume that is left
 *   <li>{@link org.sunder.engine.physics.retention}: pins and fit, and the force that keeps the joint closed
 *   <li>{@link org.sunder.engine.physics.charge}: the joint as set up, its handbook charge, ceiling and separation
 *   <li>{@link org.sunder.engine.physics.flight}: air, vents, and what the pins must hold in flight
 *   <li>{@link org.sunder.engine.physics.packing}: whether what is packed fits
 * </ul>
 *
 * <p>Quantities with units come in; SI doubles go out, as each component says. All refuse bad input with {@link
 * UnsoundSetupException}, every fault at once.
 */
@NullMarked
package org.sunder.engine.physics;

import org.jspecify.annotations.NullMarked;
