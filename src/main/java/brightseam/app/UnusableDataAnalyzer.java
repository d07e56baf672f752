package brightseam.app;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Prints why the data folder cannot be used, in place of a stack trace. Registered in META-INF/spring.factories. */
final class UnusableDataAnalyzer extends AbstractFailureAnalyzer<UnusableData> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, UnusableData cause) {
        return new FailureAnalysis(cause.getMessage(), null, cause);
    }
}
