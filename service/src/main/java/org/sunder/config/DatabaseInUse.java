package org.sunder.config;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A second process on the same database file: said in words, not in a stack trace. */
class DatabaseInUse extends AbstractFailureAnalyzer<SQLException> {

    private static final int ALREADY_OPEN = 90020; // H2's DATABASE_ALREADY_OPEN_1

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable failure, SQLException cause) {
        if (cause.getErrorCode() != ALREADY_OPEN) {
            return null;
        }
        return new FailureAnalysis(
                "The database file is in use by another process, probably another Sunder in this folder.",
                "Stop the other process, start in another folder, or set spring.datasource.url to another file.",
                failure);
    }
}
