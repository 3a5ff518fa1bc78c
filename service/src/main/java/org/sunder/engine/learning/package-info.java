/** From outcomes of tests to the correction of the charge model: deterministic Bayesian inference on a tree. */
@NullMarked
package org.sunder.engine.learning;

import org.jspecify.annotations.NullMarked;
