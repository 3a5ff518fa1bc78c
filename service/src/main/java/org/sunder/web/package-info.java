/** What every call over HTTP shares: entity tags, cursors and pages, creation that may be repeated, parameters, the specification. */
@NullMarked
package org.sunder.web;

import org.jspecify.annotations.NullMarked;
