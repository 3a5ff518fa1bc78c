/** Rows of powders, pin batches and pull tests. */
@NullMarked
package org.sunder.stock.persistence;

import org.jspecify.annotations.NullMarked;
