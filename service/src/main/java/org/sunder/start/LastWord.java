package org.sunder.start;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.diagnostics.FailureAnalysisReporter;
import org.springframework.boot.diagnostics.LoggingFailureAnalysisReporter;
import org.springframework.boot.logging.LogLevel;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;

/** Why the service did not start, in one line of the log and nothing else. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class LastWord implements FailureAnalysisReporter {

    private static final Logger LOG = LoggerFactory.getLogger("sunder");

    @Override
    public void report(FailureAnalysis analysis) {
        String action = analysis.getAction();
        String words = analysis.getDescription() + (action == null ? "" : " " + action);
        LOG.error("{}", words.replaceAll("\\s+", " ").trim());
        // Here and not among the settings: they may not have been read yet.
        LoggingSystem.get(getClass().getClassLoader())
                .setLogLevel(LoggingFailureAnalysisReporter.class.getName(), LogLevel.OFF);
    }
}
