package org.sunder.start;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A database server that is away, refuses the login, or has no such database: said in words. */
class DatabaseUnreachable extends AbstractFailureAnalyzer<SQLException> {

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable failure, SQLException cause) {
        String state = String.valueOf(cause.getSQLState());
        // Classes of SQLSTATE: connection exception, invalid authorization, invalid catalog name.
        if (!state.startsWith("08") && !state.startsWith("28") && !state.startsWith("3D")) {
            return null;
        }
        return new FailureAnalysis(
                "setting sunder.database-url: the database cannot be used: " + cause.getMessage(),
                "Check it (SUNDER_DATABASE_URL), e.g. jdbc:postgresql://host/database?user=...&password=..., and the server.",
                failure);
    }
}
