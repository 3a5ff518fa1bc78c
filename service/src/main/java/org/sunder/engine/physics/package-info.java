/**
 * What the setup of a joint is and what it takes to part it.
 *
 * <p>Quantities with units come in; SI doubles go out, as each component says. {@link JointPhysics} is the main entry; beside
 * it stand the stateless checks {@link FreeVolume}, {@link Retention}, {@link FitCheck}, {@link InsertionTable}, {@link
 * PinsInFlight}, {@link BayVents}, {@link FlightAir}. All refuse bad input with {@link UnsoundSetupException}, every fault at
 * once.
 */
@NullMarked
package org.sunder.engine.physics;

import org.jspecify.annotations.NullMarked;
