/** Pins and fit: the force that keeps the joint closed, and how sure it is. */
@NullMarked
package org.sunder.engine.physics.retention;

import org.jspecify.annotations.NullMarked;
