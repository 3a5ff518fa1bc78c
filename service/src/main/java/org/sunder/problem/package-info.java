/** Problem types and the one class that turns every failure into an RFC 9457 problem. */
@NullMarked
package org.sunder.problem;

import org.jspecify.annotations.NullMarked;
