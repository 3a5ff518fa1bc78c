/** The door: keys, limits, hosts and origins of requests, and what a key may do. */
@NullMarked
package org.sunder.access.web;

import org.jspecify.annotations.NullMarked;
