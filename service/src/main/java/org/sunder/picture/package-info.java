/** Drawing in SVG, and the mark of an outcome. */
@NullMarked
package org.sunder.picture;

import org.jspecify.annotations.NullMarked;
