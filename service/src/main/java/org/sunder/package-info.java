/** Sunder: what charge parts a joint, learned from ground tests. */
@NullMarked
package org.sunder;

import org.jspecify.annotations.NullMarked;
