/** HTTP for the log. */
@NullMarked
package org.sunder.groundtest.web;

import org.jspecify.annotations.NullMarked;
