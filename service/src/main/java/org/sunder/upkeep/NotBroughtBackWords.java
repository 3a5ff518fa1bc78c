package org.sunder.upkeep;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says why a database could not be brought back, and what to do by hand. */
class NotBroughtBackWords extends AbstractFailureAnalyzer<NotBroughtBack> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, NotBroughtBack cause) {
        return new FailureAnalysis(
                String.valueOf(cause.getMessage()),
                "Restore another backup there and delete the file " + ChangeMark.NAME + ".",
                failure);
    }
}
