package org.sunder.start;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.core.annotation.Order;

/** Another process listens there. */
@Order(0)
class PortInUse extends AbstractFailureAnalyzer<PortInUseException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, PortInUseException cause) {
        return new FailureAnalysis(
                "setting server.port: another process listens on " + cause.getPort() + ".",
                "Stop it, or set another port.",
                failure);
    }
}
