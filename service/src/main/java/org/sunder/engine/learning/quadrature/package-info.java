/** Grids, quadrature rules, kernels and fast functions: numerical tools that know nothing of rockets. */
@NullMarked
package org.sunder.engine.learning.quadrature;

import org.jspecify.annotations.NullMarked;
