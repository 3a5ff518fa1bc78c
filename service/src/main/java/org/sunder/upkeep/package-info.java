/** What whoever looks after the service needs: backups. */
@NullMarked
package org.sunder.upkeep;

import org.jspecify.annotations.NullMarked;
