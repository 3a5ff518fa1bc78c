/** What to fire next, when to stop and what to fly, under safeguards. */
@NullMarked
package org.sunder.engine.planning;

import org.jspecify.annotations.NullMarked;
