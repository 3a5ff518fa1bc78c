package org.sunder.problem;

import java.io.IOException;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the database said, by the SQLSTATE classes of the SQL standard and of PostgreSQL. */
final class SqlFailures {

    private static final int CLASS = 2;
    // Connection lost; out of disk or memory; operator intervention such as a shutdown; input or output failed.
    private static final Set<String> UNAVAILABLE = Set.of("08", "53", "57", "58");
    // Unique violation; serialization failure; deadlock.
    private static final Set<String> CONFLICT = Set.of("23505", "40001", "40P01");

    // A row was wanted for longer than the database waits: H2; PostgreSQL, where its lock_timeout is set.
    private static final Set<String> HELD = Set.of("HYT00", "55P03");

    private SqlFailures() {}

    /**
     * Whether the database is away, or can take nothing more. A failure without an SQLSTATE is the connection pool's: it
     * has no connection to give, or closed the one in use because it broke. An embedded database that could not read or
     * write its file says so by an IOException beneath.
     */
    static boolean isUnavailable(Throwable failure) {
        if (fromDatabase(failure).anyMatch(e -> causes(e).anyMatch(IOException.class::isInstance))) {
            return true;
        }
        String state = state(failure);
        return state == null
                ? fromDatabase(failure).findAny().isPresent()
                : state.length() > CLASS && UNAVAILABLE.contains(state.substring(0, CLASS));
    }

    /** Whether another change came first. */
    static boolean isConflict(Throwable failure) {
        String state = state(failure);
        return state != null && CONFLICT.contains(state);
    }

    /** Whether another change held what this one needs for too long. */
    static boolean isHeld(Throwable failure) {
        String state = state(failure);
        return state != null && HELD.contains(state);
    }

    private static @Nullable String state(Throwable failure) {
        return fromDatabase(failure)
                .map(SQLException::getSQLState)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private static Stream<Throwable> causes(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause);
    }

    private static Stream<SQLException> fromDatabase(Throwable failure) {
        return causes(failure).filter(SQLException.class::isInstance).map(SQLException.class::cast);
    }
}
