/** Everything of one flyer, out and in again: JSON without loss, and the log as CSV. */
@NullMarked
package org.sunder.exchange;

import org.jspecify.annotations.NullMarked;
