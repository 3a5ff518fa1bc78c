/** One photo of a test: what a file must be to be kept, and where photos are kept, apart from the log. */
@NullMarked
package org.sunder.photo;

import org.jspecify.annotations.NullMarked;
