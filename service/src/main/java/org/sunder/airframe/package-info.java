/** Airframes, their joints, and the immutable setups of each joint. */
@NullMarked
package org.sunder.airframe;

import org.jspecify.annotations.NullMarked;
