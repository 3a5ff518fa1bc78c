/** Who is asking: the flyer whose airframes and log a request may see. */
@NullMarked
package org.sunder.access;

import org.jspecify.annotations.NullMarked;
