/** Photos over HTTP. */
@NullMarked
package org.sunder.photo.web;

import org.jspecify.annotations.NullMarked;
