/** Rows of the log. */
@NullMarked
package org.sunder.groundtest.persistence;

import org.jspecify.annotations.NullMarked;
