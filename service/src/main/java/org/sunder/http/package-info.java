/** What every HTTP feature shares: entity tags, cursors, idempotent creation, durable commits. */
@NullMarked
package org.sunder.http;

import org.jspecify.annotations.NullMarked;
