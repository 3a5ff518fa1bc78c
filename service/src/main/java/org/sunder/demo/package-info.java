/** The demo fleet, a scenario of our own, loaded on request only. */
@NullMarked
package org.sunder.demo;

import org.jspecify.annotations.NullMarked;
