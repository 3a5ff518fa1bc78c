/** HTTP for powders and pin batches. */
@NullMarked
package org.sunder.stock.web;

import org.jspecify.annotations.NullMarked;
