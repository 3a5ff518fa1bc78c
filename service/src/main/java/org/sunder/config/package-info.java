/** Wiring: JSON, OpenAPI, durability of the embedded database. */
@NullMarked
package org.sunder.config;

import org.jspecify.annotations.NullMarked;
