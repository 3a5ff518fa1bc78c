/** What is written as JSON, to callers and into the database: quantities in words, faults gathered with where they stand. */
@NullMarked
package org.sunder.json;

import org.jspecify.annotations.NullMarked;
