package brightseam.app;

import brightseam.seal.shell.SealsUnusable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints why the sealed ledger cannot be used, in place of a stack trace. Registered in META-INF/spring.factories. */
final class SealsUnusableAnalyzer extends AbstractFailureAnalyzer<SealsUnusable> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, SealsUnusable cause) {
        return new FailureAnalysis(cause.getMessage(), null, cause);
    }
}
