/** Whether what is packed for a flight fits its compartment. */
@NullMarked
package org.sunder.engine.physics.packing;

import org.jspecify.annotations.NullMarked;
