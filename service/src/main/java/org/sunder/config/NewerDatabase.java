package org.sunder.config;

import org.flywaydb.core.api.exception.FlywayValidateException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A database whose history this version does not know is refused. */
class NewerDatabase extends AbstractFailureAnalyzer<FlywayValidateException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, FlywayValidateException cause) {
        return new FailureAnalysis(
                "The database was written by a newer version of Sunder, or its history was altered: "
                        + cause.getMessage(),
                "Start the version that wrote it, or restore a backup made before the upgrade.",
                failure);
    }
}
