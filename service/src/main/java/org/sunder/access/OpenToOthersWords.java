package org.sunder.access;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says what to set. */
class OpenToOthersWords extends AbstractFailureAnalyzer<OpenToOthers> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, OpenToOthers cause) {
        return new FailureAnalysis(
                String.valueOf(cause.getMessage()),
                "Set sunder.access.keys=true (SUNDER_ACCESS_KEYS=true), or server.address=127.0.0.1.",
                failure);
    }
}
