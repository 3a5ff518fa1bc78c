/** The pool over HTTP. */
@NullMarked
package org.sunder.pool.web;

import org.jspecify.annotations.NullMarked;
