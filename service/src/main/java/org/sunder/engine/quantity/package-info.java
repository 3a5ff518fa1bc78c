/** Quantities with their units; the only conversion code of the project. Exact decimals outside, SI doubles inside. */
@NullMarked
package org.sunder.engine.quantity;

import org.jspecify.annotations.NullMarked;
