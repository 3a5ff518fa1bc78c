/** HTTP for airframes, joints and setups. */
@NullMarked
package org.sunder.airframe.web;

import org.jspecify.annotations.NullMarked;
