package org.sunder.start;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says which setting was refused. */
class RefusedSettingWords extends AbstractFailureAnalyzer<RefusedSetting> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, RefusedSetting cause) {
        return new FailureAnalysis(String.valueOf(cause.getMessage()), null, failure);
    }
}
