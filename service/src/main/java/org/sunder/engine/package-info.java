/** The engine: an island of values and computations that knows only java.*, JSpecify and Hipparchus. */
@NullMarked
package org.sunder.engine;

import org.jspecify.annotations.NullMarked;
