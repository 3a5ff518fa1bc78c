/** The physics alone, for anything described in a request: nothing is stored. */
@NullMarked
package org.sunder.checks;

import org.jspecify.annotations.NullMarked;
