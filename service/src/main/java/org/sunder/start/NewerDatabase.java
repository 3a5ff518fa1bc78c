package org.sunder.start;

import java.util.stream.Collectors;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A database whose history this version does not know is refused. */
class NewerDatabase extends AbstractFailureAnalyzer<FlywayValidateException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, FlywayValidateException cause) {
        return new FailureAnalysis(
                "The database was written by a newer version of Sunder, or its history was altered. " + found(cause),
                "Start the version that wrote it, or restore a backup made before the upgrade.",
                failure);
    }

    /** What was found, without the advice to look the other way. */
    private static String found(FlywayValidateException cause) {
        return String.valueOf(cause.getMessage())
                .lines()
                .filter(line -> line.startsWith("Detected"))
                .collect(Collectors.joining(" "));
    }
}
