package org.sunder.start;

import java.util.stream.Collectors;
import org.flywaydb.core.internal.exception.FlywayMigrateException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A change of the tables that fails, as one does where a part of it stands already; what it had changed by then stays on H2. */
class FailedMigration extends AbstractFailureAnalyzer<FlywayMigrateException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, FlywayMigrateException cause) {
        return new FailureAnalysis(
                "A change of the tables failed. " + found(cause),
                "Restore the copy made before it first failed, backups/before-migration-….zip in the data folder, or for"
                        + " PostgreSQL your own; where there is none the database was new, and its file can be put away.",
                failure);
    }

    private static String found(FlywayMigrateException cause) {
        return String.valueOf(cause.getMessage())
                .lines()
                .map(String::trim)
                .filter(line -> line.startsWith("Failed") || line.startsWith("Message") || line.startsWith("Location"))
                .collect(Collectors.joining(" "));
    }
}
