package org.sunder.problem;

import java.sql.SQLException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the database said, by the SQLSTATE classes of the SQL standard and of PostgreSQL. */
final class SqlFailures {

    private static final int CLASS = 2;
    // Connection lost; out of disk or memory; operator intervention such as a shutdown; input or output failed.
    private static final Set<String> UNAVAILABLE = Set.of("08", "53", "57", "58");
    // Unique violation; serialization failure; deadlock.
    private static final Set<String> CONFLICT = Set.of("23505", "40001", "40P01");

    private SqlFailures() {}

    /**
     * Whether the database is away, or can take nothing more. A failure without an SQLSTATE is the connection pool's: it
     * has no connection to give, or closed the one in use because it broke.
     */
    static boolean isUnavailable(Throwable failure) {
        String state = state(failure);
        return state == null
                ? fromDatabase(failure)
                : state.length() > CLASS && UNAVAILABLE.contains(state.substring(0, CLASS));
    }

    /** Whether another change came first. */
    static boolean isConflict(Throwable failure) {
        String state = state(failure);
        return state != null && CONFLICT.contains(state);
    }

    private static boolean fromDatabase(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof SQLException) {
                return true;
            }
        }
        return false;
    }

    private static @Nullable String state(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof SQLException sql && sql.getSQLState() != null) {
                return sql.getSQLState();
            }
        }
        return null;
    }
}
