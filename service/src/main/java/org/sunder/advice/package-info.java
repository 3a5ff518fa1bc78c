/** Asks the engine about the log: estimate, next charge, flight charge, history. */
@NullMarked
package org.sunder.advice;

import org.jspecify.annotations.NullMarked;
