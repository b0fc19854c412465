package org.axlewright.api.database;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints a refused start as reason and advice in place of a stack trace. */
final class StartRefusedAnalyzer extends AbstractFailureAnalyzer<StartRefused> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, StartRefused refused) {
        return new FailureAnalysis(refused.getMessage(), refused.action(), refused);
    }
}
