/** The compartment that the charge pressurises: its cavity, what fills it, and the gas volume that is left. */
@NullMarked
package org.sunder.engine.physics.cavity;

import org.jspecify.annotations.NullMarked;
