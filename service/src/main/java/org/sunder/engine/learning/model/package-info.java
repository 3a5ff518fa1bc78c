/** What was observed and what is believed before it: values only. */
@NullMarked
package org.sunder.engine.learning.model;

import org.jspecify.annotations.NullMarked;
