/** What other flyers' rockets teach: who shares, numbered snapshots of what is known so, and on which of them answers rest. */
@NullMarked
package org.sunder.pool;

import org.jspecify.annotations.NullMarked;
