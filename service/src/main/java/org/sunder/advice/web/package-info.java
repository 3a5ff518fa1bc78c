/** HTTP for advice. */
@NullMarked
package org.sunder.advice.web;

import org.jspecify.annotations.NullMarked;
