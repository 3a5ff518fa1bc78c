/** Looks at the settings before anything is opened, and says in one line why the service did not start. */
@NullMarked
package org.sunder.start;

import org.jspecify.annotations.NullMarked;
