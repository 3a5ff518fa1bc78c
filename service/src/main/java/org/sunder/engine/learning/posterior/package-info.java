/** The posterior of a fleet: upward and downward pass, and what is asked of it. */
@NullMarked
package org.sunder.engine.learning.posterior;

import org.jspecify.annotations.NullMarked;
