package org.sunder.start;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says what of the jar differs, and that nothing was opened. */
class AlteredJarWords extends AbstractFailureAnalyzer<AlteredJar> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, AlteredJar cause) {
        return new FailureAnalysis(
                "The changes of the tables in this jar are not those that it was built with: " + cause.getMessage()
                        + ". No database was opened.",
                "Fetch the jar again, or build it anew.",
                failure);
    }
}
