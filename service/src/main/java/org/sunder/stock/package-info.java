/** What lies in the cupboard: powders and their lots, batches of shear pins and their pull tests. */
@NullMarked
package org.sunder.stock;

import org.jspecify.annotations.NullMarked;
