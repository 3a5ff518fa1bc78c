/** What to mind wherever a charge is named. */
@NullMarked
package org.sunder.caution;

import org.jspecify.annotations.NullMarked;
