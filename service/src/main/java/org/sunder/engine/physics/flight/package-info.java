/** What a flight does to a joint: air, vents, and what the pins must hold. */
@NullMarked
package org.sunder.engine.physics.flight;

import org.jspecify.annotations.NullMarked;
