/** What every table and every commit shares: rows, columns of quantities, the version of a fleet, commits that reach the disk. */
@NullMarked
package org.sunder.persistence;

import org.jspecify.annotations.NullMarked;
