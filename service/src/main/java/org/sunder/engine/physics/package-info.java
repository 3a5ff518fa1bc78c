/** What the setup of a joint is and what it takes to part it, in SI units. */
@NullMarked
package org.sunder.engine.physics;

import org.jspecify.annotations.NullMarked;
