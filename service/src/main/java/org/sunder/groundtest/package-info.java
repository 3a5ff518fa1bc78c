/** The log of ground tests: append-only, with voids. */
@NullMarked
package org.sunder.groundtest;

import org.jspecify.annotations.NullMarked;
