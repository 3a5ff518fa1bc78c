package org.sunder.persistence;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;

/**
 * Throws a connection away whose embedded database closed itself, as H2 does when the disk is full; the next one opens the
 * database again. Named in the settings of the pool.
 */
public class ClosedDatabase implements SQLExceptionOverride {

    private static final int DATABASE_IS_CLOSED = 90098; // H2's error code

    /** Called by the pool. */
    public ClosedDatabase() {}

    @java.lang.Override
    public Override adjudicate(SQLException e) {
        return e.getErrorCode() == DATABASE_IS_CLOSED ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
    }
}
