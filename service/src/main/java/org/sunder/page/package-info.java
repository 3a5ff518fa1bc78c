/** What people see: pages, pictures, and the modules that work without network. Uses the other features; nothing uses it. */
@NullMarked
package org.sunder.page;

import org.jspecify.annotations.NullMarked;
