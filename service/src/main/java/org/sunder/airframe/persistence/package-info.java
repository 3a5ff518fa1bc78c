/** Rows of airframes, joints and setups. */
@NullMarked
package org.sunder.airframe.persistence;

import org.jspecify.annotations.NullMarked;
